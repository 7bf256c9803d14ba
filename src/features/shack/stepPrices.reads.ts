import type { RowSource } from '../../db/rowSource.js';
import { priceSummaries } from '../../domain/parts/priceSummaries.js';
import type { ShackStep } from '../../domain/shack/shackSteps.js';
import { readCompletenessFacts } from '../inspections/completenessFacts.reads.js';
import { readNotedPrices } from '../prices/notedPrices.reads.js';
import { readOnShelf } from '../tasks/onShelf.reads.js';
import { readAccessoryPrices } from './accessoryPrices.reads.js';
import { readCeilings } from './ceilings.reads.js';

/** What a step may cost in the home currency, and what that rests on. */
export interface StepPrice {
  readonly minorUnits: number;
  readonly restsOn: string;
}

const emptyPlace = new Set(['POSITION_MISSING', 'POSITION_WRONG']);

const lacksOf = ({ itemId, settles }: ShackStep): { itemId: string; positionKey: string }[] =>
  settles
    .filter(({ code }) => emptyPlace.has(code))
    .map(({ subjectId }) => ({ itemId, positionKey: subjectId }));

/**
 * The price of a purchase: what was paid for accessories of its role, else price notes of their
 * models. The price of a step that fills positions: each part lies on the shelf, or has a price
 * note, or a ceiling in the wants; a part without any leaves the step without a price.
 */
export async function readStepPrices(
  source: RowSource,
  steps: readonly ShackStep[],
  currency: string,
  nowMs: number,
): Promise<(step: ShackStep) => StepPrice | null> {
  const today = new Date(nowMs).toISOString().slice(0, 10);
  const roles = await readAccessoryPrices(source, currency, today);
  const lacking = steps.flatMap(lacksOf);
  const itemIds = [...new Set(lacking.map(({ itemId }) => itemId))];
  const facts = await readCompletenessFacts(source, itemIds);
  const partTypeAt = (itemId: string, key: string): string | null =>
    facts.get(itemId)?.fitOut.find(({ positionKey }) => positionKey === key)?.partTypeId ?? null;
  const partTypeIds = [
    ...new Set(lacking.flatMap((one) => partTypeAt(one.itemId, one.positionKey) ?? [])),
  ];
  const shelf = await readOnShelf(source.rows.bind(source), source.dialect, partTypeIds);
  const notes = await readNotedPrices(source, 'part_type_id', partTypeIds);
  const ceilingOf = await readCeilings(source, currency);

  const partPrice = (itemId: string, positionKey: string): (StepPrice & { of: Ground }) | null => {
    const partTypeId = partTypeAt(itemId, positionKey);
    const noted = priceSummaries(notes.get(partTypeId ?? '') ?? [], today).find(
      (summary) => summary.currency === currency,
    );
    if (partTypeId !== null && (shelf.get(partTypeId) ?? 0) > 0) return ground(0, 'shelf');
    if (noted && noted.medianMinorUnits !== null) return ground(noted.medianMinorUnits, 'notes');
    const ceiling = ceilingOf({ itemId, positionKey, partTypeId });
    return ceiling === null ? null : ground(ceiling, 'ceiling');
  };

  return (step) => {
    if (step.adds !== null) return roles.get(step.adds.roleCode) ?? null;
    const parts = lacksOf(step).map((one) => partPrice(one.itemId, one.positionKey));
    const known = parts.filter((part) => part !== null);
    if (parts.length === 0 || known.length < parts.length) return null;
    return {
      minorUnits: known.reduce((sum, { minorUnits }) => sum + minorUnits, 0),
      restsOn: `Parts: ${[...new Set(known.map(({ of }) => grounds[of]))].join('; ')}.`,
    };
  };
}

const grounds = {
  shelf: 'on the shelf already',
  notes: 'the median of recent price notes',
  ceiling: 'the ceiling of a want',
} as const;
type Ground = keyof typeof grounds;

const ground = (minorUnits: number, of: Ground) => ({ minorUnits, of, restsOn: grounds[of] });
