import { figureCell, Table } from '../../parts/Table.js';
import { useTexts } from '../../texts/textsContext.js';
import type { ShownLog } from './ContactLogPage.js';
import { leftOut, meantFor, type LogDraft } from './logDraft.js';

/** What the log says of the rig, and which one it was taken for: to be set right. */
export function LogRigs({
  rigTexts,
  rigs,
  draft: { meant },
  choose,
}: {
  rigTexts: ShownLog['rigTexts'];
  rigs: readonly { id: string; inventoryNumber: string; name: string | null }[];
  draft: LogDraft;
  choose: (changes: Partial<LogDraft>) => void;
}) {
  const { contactLog, bringList } = useTexts();
  return (
    <section>
      <h2>{contactLog.rigs}</h2>
      <Table
        name={contactLog.rigs}
        head={
          <tr>
            <th scope="col">{contactLog.said}</th>
            <th scope="col" className={figureCell}>
              {contactLog.contacts}
            </th>
            <th scope="col">{contactLog.takenFor}</th>
          </tr>
        }
      >
        {rigTexts.map(({ text, contacts, inventoryNumber }) => (
          <tr key={text ?? ''}>
            <th scope="row">{text ?? contactLog.saysNone}</th>
            <td className={figureCell}>{contacts}</td>
            <td>
              {text === null ? (
                (inventoryNumber ?? contactLog.nobody)
              ) : (
                <select
                  aria-label={contactLog.takenForOf(text)}
                  value={meant[meantFor(text)] ?? ''}
                  onChange={({ target }) => {
                    const { [meantFor(text)]: _before, ...others } = meant;
                    choose({
                      meant:
                        target.value === ''
                          ? others
                          : { ...others, [meantFor(text)]: target.value },
                    });
                  }}
                >
                  <option value="">{inventoryNumber ?? contactLog.nobody}</option>
                  {rigs.map(({ id, inventoryNumber: number, name }) => (
                    <option key={id} value={id}>
                      {[number, name].filter(Boolean).join(' ')}
                    </option>
                  ))}
                  <option value={leftOut}>{bringList.leaveOut}</option>
                </select>
              )}
            </td>
          </tr>
        ))}
      </Table>
    </section>
  );
}
