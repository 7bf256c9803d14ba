import type { ImportListMutation, ListField } from '../../gql/graphql.js';
import { Table } from '../../parts/Table.js';
import { useTexts } from '../../texts/textsContext.js';

type Report = NonNullable<ImportListMutation['importList']['report']>;

/** What each column was taken for, to be set right. */
export function ImportColumns({
  columns,
  change,
}: {
  columns: Report['columns'];
  change: (column: string, field: ListField | 'IGNORE') => void;
}) {
  const { bringList } = useTexts();
  return (
    <section>
      <h2>{bringList.columns}</h2>
      <Table
        name={bringList.columns}
        head={
          <tr>
            <th scope="col">{bringList.heading}</th>
            <th scope="col">{bringList.meaning}</th>
          </tr>
        }
      >
        {columns.map(({ column, field, isIgnored }) => (
          <tr key={column}>
            <th scope="row">{column}</th>
            <td>
              <select
                aria-label={`${bringList.meaning}: ${column}`}
                value={isIgnored ? 'IGNORE' : (field ?? '')}
                onChange={(event) => {
                  change(column, event.target.value as ListField | 'IGNORE');
                }}
              >
                {field === null && !isIgnored && <option value="">{bringList.toNote}</option>}
                {Object.entries(bringList.fields).map(([each, name]) => (
                  <option key={each} value={each}>
                    {name}
                  </option>
                ))}
                <option value="IGNORE">{bringList.leaveOut}</option>
              </select>
            </td>
          </tr>
        ))}
      </Table>
    </section>
  );
}
