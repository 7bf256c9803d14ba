import { useFormats } from '../../locale/useFormats.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { Sheet } from '../../parts/Sheet.js';
import { figureCell, Table } from '../../parts/Table.js';
import { useTexts } from '../../texts/textsContext.js';
import type { ShownSet } from './SetPage.js';

/** What was spent on it, a currency a line; nothing is converted. */
export function SetMoney({ item }: { item: ShownSet }) {
  const { set } = useTexts();
  const formats = useFormats();
  const { byCurrency, basis } = item.cost;
  return (
    <Sheet id="money" title={set.money} aside={<BasisButton of={set.money} basis={basis} />}>
      {byCurrency.length === 0 ? (
        <p>{set.noCost}</p>
      ) : (
        <Table
          name={set.money}
          head={
            <tr>
              <th scope="col">{set.currency}</th>
              {[set.price, set.extras, set.expenses, set.total].map((name) => (
                <th key={name} scope="col" className={figureCell}>
                  {name}
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
      )}
    </Sheet>
  );
}
