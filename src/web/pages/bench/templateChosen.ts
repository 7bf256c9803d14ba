import { newKey } from '../../api/newKey.js';
import { typedUnit } from '../../locale/writtenUnit.js';
import type { BenchItem } from './BenchPage.js';
import { onToNext, type SweepDraft } from './sweepDraft.js';
import type { MeasuredPlace } from './measuredPlaces.js';

export type OfferedTemplate = NonNullable<BenchItem['model']>['sweepTemplates'][number];

/** A sweep as the template has it, from its first position without a row; null: without one. */
export function templateChosen(
  draft: SweepDraft,
  template: OfferedTemplate | null,
  places: readonly MeasuredPlace[],
): SweepDraft {
  const key = newKey();
  if (!template) return { ...draft, key, templateId: '', more: [], planned: [], moreValues: [] };
  const [first, ...more] = template.quantities;
  const { id, tier, instrument, designators } = template;
  const chosen = {
    ...draft,
    key,
    templateId: id,
    quantity: first?.quantity ?? draft.quantity,
    unit: first ? typedUnit(first.unit) : draft.unit,
    more: more.map(({ quantity, unit }) => ({ quantity, unit })),
    tier,
    instrument: instrument ?? '',
    planned: designators,
    designator: '',
  };
  return onToNext(chosen, places);
}
