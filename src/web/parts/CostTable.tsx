import { useFormats } from '../locale/useFormats.js';
import { useTexts } from '../texts/textsContext.js';
import { figureCell, Table } from './Table.js';

interface Money {
  amount: string;
  currency: string;
}

/** What was spent, a currency a line; nothing is converted. */
export function CostTable({
  name,
  byCurrency,
}: {
  name: string;
  byCurrency: readonly {
    currency: string;
    price: Money;
    extras: Money;
    expenses: Money;
    total: Money;
  }[];
}) {
  const { set } = useTexts();
  const formats = useFormats();
  if (byCurrency.length === 0) return <p>{set.noCost}</p>;
  return (
    <Table
      name={name}
      head={
        <tr>
          <th scope="col">{set.currency}</th>
          {[set.price, set.extras, set.expenses, set.total].map((column) => (
            <th key={column} scope="col" className={figureCell}>
              {column}
            </th>
          ))}
        </tr>
      }
    >
      {byCurrency.map(({ currency, price, extras, expenses, total }) => (
        <tr key={currency}>
          <th scope="row">{currency}</th>
          {[price, extras, expenses, total].map((amount, index) => (
            <td key={index} className={figureCell}>
              {formats.money(amount)}
            </td>
          ))}
        </tr>
      ))}
    </Table>
  );
}
