import { Table } from '../../parts/Table.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import type { ShownProvenance } from './ProvenancePage.js';

/** The events one by one, each with how far it can be relied on and by which rule. */
export function ChainEvents({ shown }: { shown: ShownProvenance }) {
  const { provenance, set, words } = useTexts();
  if (shown.events.nodes.length === 0) return <p>{set.noStory}</p>;
  return (
    <Table
      name={provenance.events}
      head={
        <tr>
          <th scope="col">{provenance.when}</th>
          <th scope="col">{provenance.what}</th>
          <th scope="col">{provenance.reliance}</th>
        </tr>
      }
    >
      {shown.events.nodes.map((event) => (
        <tr key={event.id}>
          <td>{event.dateEdtf ?? set.undated}</td>
          <th scope="row">
            {[
              words.eventKind[event.kind],
              set.told.fromTo(event.fromParty?.name ?? '', event.toParty?.name ?? ''),
              // A school both has a set and is where it stands: once is enough.
              event.placeName === event.toParty?.name ? '' : event.placeName,
            ]
              .filter(Boolean)
              .join(', ')}
            {event.note && <p>{event.note}</p>}
          </th>
          <td>
            {words.confidence[event.confidence.level]}
            <p {...fromApi}>{event.confidence.rule}</p>
          </td>
        </tr>
      ))}
    </Table>
  );
}
