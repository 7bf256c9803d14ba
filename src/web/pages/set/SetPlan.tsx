import { useLiveQuery } from '../../api/useLiveQuery.js';
import { SetPlanDocument, type PlacedComponentFragment } from '../../gql/graphql.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Sheet } from '../../parts/Sheet.js';
import { Table } from '../../parts/Table.js';
import { useTexts } from '../../texts/textsContext.js';
import { planRows } from './planRows.js';

/** Position by position: what is expected, what is there, and in what state. */
export function SetPlan({ number }: { number: string }) {
  const { set, words } = useTexts();
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: SetPlanDocument,
    variables: { number },
  });
  const rows = planRows(data?.item ?? null);
  return (
    <Sheet id="positions" title={set.positions}>
      {error && !data && <Failed error={error} retry={fetchAgain} />}
      {!data && !error && <Loading />}
      {data && rows.length === 0 && <p>{set.noPositions}</p>}
      {rows.length > 0 && (
        <Table
          name={set.positions}
          head={
            <tr>
              <th scope="col">{set.columns.position}</th>
              <th scope="col">{set.columns.expected}</th>
              <th scope="col">{set.columns.there}</th>
              <th scope="col">{set.columns.state}</th>
            </tr>
          }
        >
          {rows.map((row) => (
            <tr key={row.key}>
              <th scope="row">{row.designator}</th>
              <td>
                {row.isExpected ? (row.expected ?? '–') : set.elsewhere}
                {row.isExpected && !row.isRequired && ` (${set.optional})`}
              </td>
              <td>
                {row.component ? (
                  <Part component={row.component} />
                ) : (
                  words.positionState[row.state]
                )}
              </td>
              <td>
                {row.component?.state.state
                  ? words.componentState[row.component.state.state]
                  : row.component
                    ? words.positionState[row.state]
                    : ''}
              </td>
            </tr>
          ))}
        </Table>
      )}
    </Sheet>
  );
}

function Part({ component }: { component: PlacedComponentFragment }) {
  const { words } = useTexts();
  const { partType, marking, dateCode, origin } = component;
  const name = [partType?.designation, marking, dateCode].filter(Boolean).join(' ');
  return (
    <>
      {name || '–'}, {words.origin[origin]}
    </>
  );
}
