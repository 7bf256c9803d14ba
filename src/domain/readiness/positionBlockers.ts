import type { Blocker } from './blocker.js';
import type { PositionFacts } from './readinessFacts.js';

/** The required positions found empty or wrongly filled. */
export function positionBlockers(positions: readonly PositionFacts[]): Blocker[] {
  return positions
    .filter((position) => position.isRequired)
    .flatMap(({ positionKey, state }): Blocker[] => {
      const subject = {
        level: 'NOT_READY',
        subjectKind: 'POSITION',
        subjectId: positionKey,
      } as const;
      if (state === 'MISSING') {
        const message = `Nothing is in ${positionKey}.`;
        const wouldBeMetBy = `Fit the part for ${positionKey}.`;
        return [{ ...subject, code: 'POSITION_MISSING', message, wouldBeMetBy }];
      }
      if (state === 'WRONG') {
        const message = `A wrong part is in ${positionKey}.`;
        const wouldBeMetBy = `Fit the right part in ${positionKey}, or check the position again.`;
        return [{ ...subject, code: 'POSITION_WRONG', message, wouldBeMetBy }];
      }
      return [];
    });
}
