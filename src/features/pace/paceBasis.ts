import { shownBasis } from '../standing/standingFacts.js';
import { paceWeeks, type PaceOfPerson } from './paceOfPerson.js';

/** How dates come about from a person's own weeks. */
export const paceBasis = (
  { pace, blockWeeks }: PaceOfPerson,
  nowMs: number,
  more: readonly string[] = [],
) =>
  shownBasis(
    {
      method:
        'Weeks to come are drawn from the weeks really kept, idle ones among them, until the hours left are done; days declared away are taken off.',
      counted: [
        { what: 'weeks that tell of the pace', count: pace.weeks.length },
        { what: 'idle weeks among them', count: pace.idleWeekCount },
        { what: 'weeks away left out', count: pace.awayWeekCount },
      ],
    },
    nowMs,
    [
      `The pace of the last ${paceWeeks} weeks at most goes on as it was; the week that is not over does not count.`,
      blockWeeks === 1
        ? 'Each week is drawn by itself: there are too few to keep runs of weeks together.'
        : `Weeks are drawn ${blockWeeks} in a row, so that busy and idle times stay together.`,
      ...more,
    ],
  );
