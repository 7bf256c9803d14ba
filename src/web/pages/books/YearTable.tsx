import type { BooksQuery } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { figureCell, Table } from '../../parts/Table.js';
import { useTexts } from '../../texts/textsContext.js';

/** What the collection had cost and was worth at the end of each year, the latest first. */
export function YearTable({ shown }: { shown: BooksQuery['books'] }) {
  const { books } = useTexts();
  const formats = useFormats();
  if (shown.years.length === 0) return <p>{books.noYears}</p>;
  return (
    <>
      <Table
        name={books.years}
        head={
          <tr>
            <th scope="col">{books.onDay}</th>
            {[books.held, books.cost, books.worth].map((name) => (
              <th key={name} scope="col" className={figureCell}>
                {name}
              </th>
            ))}
          </tr>
        }
      >
        {[...shown.years].reverse().map(({ day, heldCount, valuedCount, cost, worth }) => (
          <tr key={day}>
            <th scope="row">{formats.localDay(day)}</th>
            <td className={figureCell}>{books.ofThemValued(heldCount, valuedCount)}</td>
            <td className={figureCell}>{cost.total ? formats.money(cost.total) : '–'}</td>
            <td className={figureCell}>{worth.total ? formats.money(worth.total) : '–'}</td>
          </tr>
        ))}
      </Table>
      {shown.disposals.map(({ disposalId, inventoryNumber, disposedOn, gain }) => (
        <p key={disposalId + inventoryNumber}>
          {books.wentFor(
            inventoryNumber,
            formats.localDay(disposedOn),
            gain ? formats.money({ ...gain, amount: gain.amount.replace('-', '') }) : '–',
            gain?.amount.startsWith('-') ?? false,
          )}
        </p>
      ))}
    </>
  );
}
