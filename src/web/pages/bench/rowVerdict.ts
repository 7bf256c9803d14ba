import type { VerdictWord } from '../../gql/graphql.js';
import { gravestVerdict } from './gravestVerdict.js';
import type { MeasuredPlace } from './measuredPlaces.js';
import { columnsOf, valuesOf, type SweepDraft, type SweptRow } from './sweepDraft.js';
import { typedVerdict } from './typedVerdict.js';

/** What the limits will say of a row; null when that is seen only once it is sent. */
export function rowVerdict(
  draft: SweepDraft,
  row: Pick<SweptRow, 'value' | 'moreValues'>,
  place: MeasuredPlace | undefined,
): VerdictWord | null {
  const values = valuesOf(row, draft);
  const words = columnsOf(draft).flatMap((column, index) => {
    const value = values[index] ?? '';
    if (value.trim() === '') return [];
    return [typedVerdict({ ...column, tier: draft.tier, value }, place?.limits ?? [])];
  });
  const known = words.filter((word) => word !== null);
  return known.length < words.length ? null : (gravestVerdict(known) ?? null);
}
