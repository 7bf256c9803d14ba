import { DateTime } from 'luxon';
import type { RowSource } from '../../db/rowSource.js';
import { countedSlices } from '../../domain/hours/countedSlices.js';
import { tallySecondsByWeek } from '../../domain/hours/tallySecondsByWeek.js';
import { dayNumber } from '../../domain/dates/dayNumber.js';
import { awayDays, type IsAway } from '../../domain/pace/awayDays.js';
import { keptWeeks } from '../../domain/pace/keptWeeks.js';
import { pace, type Pace } from '../../domain/pace/pace.js';
import { todayAtBench } from './todayAtBench.js';
import { sessionRowColumns, withBreaks, type SessionRow } from '../work/sessionRows.reads.js';

/** Two years: long enough for the seasons, short enough to be about the same person. */
export const paceWeeks = 104;

export interface PaceOfPerson {
  pace: Pace;
  isAway: IsAway;
  /** The local date at the bench, and its day number. */
  today: string;
  todayNumber: number;
  /** What weeks to come are drawn from, in their order; empty when no week had any work. */
  weekHours: readonly number[];
  /** Weeks drawn together: a month, once there are three. */
  blockWeeks: number;
}

const fewestWeeksForBlocks = 12;
const weeksInBlock = 4;
const weekMs = 7 * 24 * 60 * 60 * 1000;

/** The pace that a person really kept, from their own sessions, in three statements. */
export async function paceOfPerson(
  source: RowSource,
  personId: string,
  nowMs: number,
): Promise<PaceOfPerson> {
  const { today } = await todayAtBench(source, nowMs);
  const away = await source.rows<{ fromOn: string; untilOn: string; isYearly: boolean | number }>(
    `SELECT from_on AS "fromOn", until_on AS "untilOn", is_yearly AS "isYearly" FROM away
     WHERE person_id = ? AND withdrawn_at IS NULL`,
    [personId],
  );
  const isAway = awayDays(away.map((range) => ({ ...range, isYearly: Boolean(range.isYearly) })));
  const since = new Date(nowMs - (paceWeeks + 2) * weekMs).toISOString();
  const sessions = await source.rows<SessionRow>(
    `SELECT ${sessionRowColumns} FROM work_session
     LEFT JOIN task ON task.id = work_session.task_id
     WHERE work_session.person_id = ? AND work_session.started_at >= ?
       AND work_session.ended_at IS NOT NULL`,
    [personId, since],
  );
  const worked = await withBreaks(source.rows.bind(source), source.dialect, sessions);
  const hoursByMonday = new Map<string, number>();
  for (const { localWeek, seconds } of tallySecondsByWeek(countedSlices(worked, nowMs).slices)) {
    const monday = DateTime.fromISO(localWeek, { zone: 'utc' }).toISODate() as string;
    hoursByMonday.set(monday, (hoursByMonday.get(monday) ?? 0) + seconds / 3600);
  }
  const kept = pace(keptWeeks(hoursByMonday, today, isAway, paceWeeks));
  const weekHours = kept.weeks.map(({ hours }) => hours);
  return {
    pace: kept,
    isAway,
    today,
    todayNumber: dayNumber(today),
    weekHours: weekHours.some((hours) => hours > 0) ? weekHours : [],
    blockWeeks: weekHours.length < fewestWeeksForBlocks ? 1 : weeksInBlock,
  };
}
