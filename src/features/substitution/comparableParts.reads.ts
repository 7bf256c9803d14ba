import type { RowSource } from '../../db/rowSource.js';
import { groupedBy } from '../../db/groupedBy.js';
import { capacitorRatingsOf, tubeRatingsOf, type PartFacts } from './partFacts.js';

type KeptPart = Omit<PartFacts, 'ratings'> & { ratings: string; isRetired: boolean | number };

/** The part types of the collection, and those in use by what they can be compared on at all. */
export interface ComparableParts {
  byId: ReadonlyMap<string, PartFacts>;
  /** Those that could go where `part` goes, itself included. */
  beside(part: PartFacts): readonly PartFacts[];
}

export async function readComparableParts({ rows }: RowSource): Promise<ComparableParts> {
  const kept = await rows<KeptPart>(
    `SELECT id AS "id", kind AS "kind", designation AS "designation", ratings AS "ratings",
       tube_base AS "tubeBase", tube_class AS "tubeClass", tube_source AS "tubeSource",
       CASE WHEN retired_at IS NULL THEN 0 ELSE 1 END AS "isRetired"
     FROM part_type ORDER BY designation, id`,
  );
  const parts = kept.map(({ ratings, ...part }) => ({
    ...part,
    ratings: JSON.parse(ratings) as PartFacts['ratings'],
  }));
  const inUse = parts.filter(({ isRetired }) => !isRetired);
  const byKey = groupedBy(inUse, keyOf);
  return {
    byId: new Map(parts.map((part) => [part.id, part])),
    beside: (part) => (keyOf(part) === '' ? [] : (byKey.get(keyOf(part)) ?? [])),
  };
}

/** The socket of a tube, the sort of a capacitor; empty for what nothing is computed for. */
function keyOf(part: PartFacts): string {
  if (part.kind === 'TUBE') return tubeRatingsOf(part).base?.value ?? '';
  return part.kind === 'CAPACITOR' && capacitorRatingsOf(part) ? 'capacitor' : '';
}
