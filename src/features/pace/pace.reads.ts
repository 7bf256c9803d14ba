import type { ApiContext } from '../../api/kit/apiContext.js';
import { computedReads } from '../../api/kit/computedReads.js';
import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import { dateOfDay } from '../../domain/dates/dayNumber.js';
import { hundredths } from '../standing/standingFacts.js';
import { paceBasis } from './paceBasis.js';
import type { PaceOfPerson } from './paceOfPerson.js';

const columns = selectColumns('away', [
  'id',
  'version',
  'personId',
  'fromOn',
  'untilOn',
  'isYearly',
  'note',
  'withdrawnAt',
]);

export const awayReads = tableReads('Away', 'away', columns, { person: one('Party', 'personId') });

/** A pace is no record; its row has the id of the person. */
export const paceReads = computedReads('Pace', {
  person: one('Party', 'id'),
  away: list('Away', {
    table: 'away',
    columns,
    parentColumn: 'person_id',
    orderBy: 'away.from_on, away.id',
    where: 'away.withdrawn_at IS NULL',
  }),
});

/** A pace as the API shows it. */
export const shownPace = (personId: string, of: PaceOfPerson, { nowMs }: ApiContext) => ({
  id: personId,
  meanHoursPerWeek: of.pace.meanHours === null ? null : hundredths(of.pace.meanHours),
  medianHoursPerWeek: of.pace.medianHours === null ? null : hundredths(of.pace.medianHours),
  idleWeeks: of.pace.idleWeekCount,
  awayWeeks: of.pace.awayWeekCount,
  weeks: of.pace.weeks.map(({ monday, hours, awayDays }) => ({
    mondayOn: dateOfDay(monday),
    hours: hundredths(hours),
    awayDays,
  })),
  basis: paceBasis(of, nowMs),
});
