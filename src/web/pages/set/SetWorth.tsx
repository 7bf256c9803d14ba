import { useLiveQuery } from '../../api/useLiveQuery.js';
import { SetWorthDocument, type ShownIntervalFragment } from '../../gql/graphql.js';
import { Failed } from '../../parts/Failed.js';
import { useFormats } from '../../locale/useFormats.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { Sheet } from '../../parts/Sheet.js';
import { figureCell, Table } from '../../parts/Table.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { GoingOn } from './GoingOn.js';
import { isOpen } from './isOpen.js';
import type { ShownSet } from './SetPage.js';

/** What it is worth as an interval each way, and whether it is worth going on. */
export function SetWorth({ number, projects }: { number: string; projects: ShownSet['projects'] }) {
  const { set, words } = useTexts();
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: SetWorthDocument,
    variables: { number },
  });
  if (error && !data) return <Failed error={error} retry={fetchAgain} />;
  const item = data?.item;
  if (!item?.worth) return null;
  const { worth } = item;
  const rows = [
    {
      name: set.asItStands(words.conditionStandard[worth.presentStandard]),
      value: worth.asItStands,
    },
    ...(worth.targetStandard
      ? [
          {
            name: set.atTarget(words.conditionStandard[worth.targetStandard]),
            value: worth.atTarget,
          },
        ]
      : []),
    { name: set.asParts, value: worth.asParts },
  ];
  const isKnown = rows.some(({ value }) => value !== null);
  return (
    <Sheet id="worth" title={set.worth} aside={<BasisButton of={set.worth} basis={worth.basis} />}>
      {isKnown ? (
        <Table
          name={set.worth}
          head={
            <tr>
              <th scope="col">{set.worthHow}</th>
              {[set.low, set.likely, set.high].map((name) => (
                <th key={name} scope="col" className={figureCell}>
                  {name}
                </th>
              ))}
            </tr>
          }
        >
          {rows.map(({ name, value }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <Interval value={value} />
            </tr>
          ))}
        </Table>
      ) : (
        <p>{set.worthUnknown}</p>
      )}
      {worth.problems.map(({ message }) => (
        <p key={message} {...fromApi}>
          {message}
        </p>
      ))}
      {projects.map(
        ({ id, title, status }) =>
          isOpen(status) && <GoingOn key={id} id={String(id)} title={title} />,
      )}
    </Sheet>
  );
}

function Interval({ value }: { value: ShownIntervalFragment | null }) {
  const formats = useFormats();
  const ends = value ? [value.low, value.likely, value.high] : [null, null, null];
  return ends.map((end, index) => (
    <td key={index} className={figureCell}>
      {end ? formats.money(end) : '–'}
    </td>
  ));
}
