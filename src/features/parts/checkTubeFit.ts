import type { Checklist } from '../../db/checklist.js';
import { shortText } from '../../db/shortText.js';
import type { PartKind } from './partKind.js';
import type { PartTypeEntity } from './partType.entity.js';
import type { TubeFitInput } from './partType.inputs.js';

type TubeFit = Required<Pick<PartTypeEntity, 'tubeBase' | 'tubeClass' | 'tubeSource'>>;

/** A tube's base and class as they are kept; of no other sort of part. */
export function checkTubeFit(
  check: Checklist,
  kind: PartKind,
  tube: TubeFitInput | null | undefined,
): TubeFit {
  if (tube === null || tube === undefined) {
    return { tubeBase: null, tubeClass: null, tubeSource: null };
  }
  check.that(kind === 'TUBE', 'Only a tube has a basing code and a class.', ['tube']);
  const base = shortText(check, tube.base, ['tube', 'base'], 10)?.toUpperCase() ?? null;
  check.that(
    base === null || /^\d{1,2}[A-Z]{1,2}$/.test(base),
    'A basing code is a number and one or two letters: 7BK, 9A.',
    ['tube', 'base'],
  );
  return {
    tubeBase: base,
    tubeClass: tube.tubeClass ?? null,
    tubeSource: check.text(tube.source, ['tube', 'source']),
  };
}
