import type { ApiContext } from '../../api/kit/apiContext.js';
import type { Row } from '../../api/kit/typeReads.js';
import { readNotedPrices } from '../prices/notedPrices.reads.js';
import type { PriceEstimate } from '../prices/price.type.js';
import { shownPrices } from '../prices/shownPrices.js';
import { substituteRelationsOfPartType } from '../substitution/substitutes.reads.js';

interface Wanted {
  id: string;
  partTypeId?: unknown;
}

const mostStandIns = 10;

const partTypesOf = (wants: readonly Wanted[]): string[] => [
  ...new Set(wants.flatMap(({ partTypeId }) => (typeof partTypeId === 'string' ? partTypeId : []))),
];

/**
 * What serves instead of each want by the substitution graph, the best first. Undecided ones are not
 * among them: at a fair nobody can look the ratings up.
 */
export async function readStandIns(
  context: ApiContext,
  wants: readonly Wanted[],
): Promise<Row[][]> {
  const ids = partTypesOf(wants);
  const parents = ids.map((id) => ({ id }));
  const { values } = await substituteRelationsOfPartType.substitutes(
    context,
    parents,
    {},
    new Set(),
  );
  const byPart = new Map(ids.map((id, index) => [id, values[index] as Row[]]));
  return wants.map(({ partTypeId }) =>
    (byPart.get(String(partTypeId)) ?? [])
      .filter((row) => row['serves'] === true)
      .slice(0, mostStandIns)
      .map((row) => ({ ...row })),
  );
}

/** What one costs by the prices noted, for each want, a currency each. */
export async function readWantPrices(
  { database, nowMs }: ApiContext,
  wants: readonly Wanted[],
): Promise<PriceEstimate[][]> {
  const notes = await readNotedPrices(database.reader, 'part_type_id', partTypesOf(wants));
  return wants.map(({ partTypeId }) => shownPrices(notes.get(String(partTypeId)) ?? [], nowMs));
}
