import { BasisButton } from '../../parts/BasisButton.js';
import { CostTable } from '../../parts/CostTable.js';
import { Sheet } from '../../parts/Sheet.js';
import { useTexts } from '../../texts/textsContext.js';
import type { ShownSet } from './SetPage.js';

/** What was spent on it so far. */
export function SetMoney({ item }: { item: ShownSet }) {
  const { set } = useTexts();
  const { byCurrency, basis } = item.cost;
  return (
    <Sheet id="money" title={set.money} aside={<BasisButton of={set.money} basis={basis} />}>
      <CostTable name={set.money} byCurrency={byCurrency} />
    </Sheet>
  );
}
