import type { BooksQuery } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { figureCell, Table } from '../../parts/Table.js';
import { useTexts } from '../../texts/textsContext.js';

/** What was spent in each month, and what was held worth at its end; the latest first. */
export function MonthTable({ months }: { months: BooksQuery['books']['months'] }) {
  const { books } = useTexts();
  const formats = useFormats();
  if (months.length === 0) return <p>{books.noYears}</p>;
  const unread = months.filter(({ spent, worth }) => !spent.total || !worth.total);
  return (
    <>
      <Table
        name={books.months}
        head={
          <tr>
            <th scope="col">{books.month}</th>
            {[books.spentIn, books.worth].map((name) => (
              <th key={name} scope="col" className={figureCell}>
                {name}
              </th>
            ))}
          </tr>
        }
      >
        {[...months].reverse().map(({ month, spent, worth }) => (
          <tr key={month}>
            <th scope="row">{formats.month(month)}</th>
            <td className={figureCell}>{spent.total ? formats.money(spent.total) : '–'}</td>
            <td className={figureCell}>{worth.total ? formats.money(worth.total) : '–'}</td>
          </tr>
        ))}
      </Table>
      {unread.length > 0 && (
        <p>{books.noRateFor(unread.map(({ month }) => formats.month(month)).join(', '))}</p>
      )}
    </>
  );
}
