import type { RowSource } from '../../db/rowSource.js';
import { itemBlockers } from '../../domain/readiness/itemBlockers.js';
import { readFindings } from '../findings/findingFacts.reads.js';
import { readHazards } from '../hazards/hazardFacts.reads.js';

/**
 * Why power must stay off these items, whatever else is true: hazards that are not cleared and
 * findings that forbid use, by the rules of readiness. An item that nothing stands against has an
 * empty list, which is no permission.
 */
export async function whyNoPower(
  source: RowSource,
  items: readonly { id: string; name: string }[],
): Promise<Map<string, string[]>> {
  const ids = items.map(({ id }) => id);
  const hazards = await readHazards(source, ids);
  const findings = await readFindings(source, ids);
  return new Map(
    items.map(({ id, name }) => {
      const blockers = itemBlockers({
        itemId: id,
        name,
        isRetired: false,
        isInHand: true,
        components: [],
        hazards: hazards.get(id) ?? [],
        findings: findings.get(id) ?? [],
      });
      const reasons = blockers.map(({ message, wouldBeMetBy }) => `${message} ${wouldBeMetBy}`);
      return [id, reasons];
    }),
  );
}
