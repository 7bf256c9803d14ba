import { groupedBy } from '../../db/groupedBy.js';
import { listParameter, type Dialect } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { longestSessionMs } from './sessionBounds.js';
import { sessionRowColumns, type SessionRow } from './sessionRows.reads.js';

const endOfTime = '9999-12-31T23:59:59.999Z';

/** A stretch of one person's time, as instants in text. */
interface Window {
  personId: string;
  from: string;
  until: string;
}

/**
 * Every other session of the same persons that shares time with one of these, in two statements.
 *
 * A session can begin as long before another as a session can last. These stretches are joined
 * where they meet, so that each session is read once however densely a person works.
 */
export async function readSessionsAround(
  query: RowSource['rows'],
  dialect: Dialect,
  sessions: readonly SessionRow[],
): Promise<SessionRow[]> {
  if (sessions.length === 0) return [];
  const stretches = joined(sessions.map(windowOf)).map(
    ({ personId, from, until }) => personId + from + until,
  );
  const near = await query<SessionRow>(
    `SELECT ${sessionRowColumns}
     FROM ${dialect.eachText} AS stretch
     JOIN work_session ON work_session.person_id = substr(stretch.value, 1, 36)
       AND work_session.started_at >= substr(stretch.value, 37, 24)
       AND work_session.started_at < substr(stretch.value, 61, 24)
     LEFT JOIN task ON task.id = work_session.task_id`,
    [listParameter(stretches)],
  );
  const running = await query<SessionRow>(
    `SELECT ${sessionRowColumns} FROM work_session
     LEFT JOIN task ON task.id = work_session.task_id
     WHERE work_session.ended_at IS NULL
       AND ${dialect.isAnyOf('work_session.person_id')}`,
    [listParameter([...new Set(sessions.map(({ personId }) => personId))])],
  );
  const own = new Set(sessions.map(({ id }) => id));
  const others = new Map([...near, ...running].map((session) => [session.id, session]));
  const claimed = groupedBy(sessions, ({ personId }) => personId);
  const latestEnds = new Map([...claimed].map(([id, list]) => [id, endsSoFar(list)]));
  return [...others.values()].filter(
    (session) => !own.has(session.id) && sharesTime(session, latestEnds.get(session.personId)),
  );
}

const windowOf = ({ personId, startedAt, endedAt }: SessionRow): Window => ({
  personId,
  from: new Date(Date.parse(startedAt) - longestSessionMs).toISOString(),
  until: endedAt ?? endOfTime,
});

function joined(windows: readonly Window[]): Window[] {
  const ordered = [...windows].sort((left, right) =>
    left.personId + left.from < right.personId + right.from ? -1 : 1,
  );
  const result: Window[] = [];
  for (const window of ordered) {
    const last = result.at(-1);
    if (last?.personId !== window.personId || last.until < window.from) result.push({ ...window });
    else if (last.until < window.until) last.until = window.until;
  }
  return result;
}

/** Sessions by start, each with the latest end of all up to it. */
function endsSoFar(sessions: readonly SessionRow[]): { startedAt: string; latestEnd: string }[] {
  let latestEnd = '';
  return [...sessions]
    .sort((left, right) => (left.startedAt < right.startedAt ? -1 : 1))
    .map(({ startedAt, endedAt }) => {
      const end = endedAt ?? endOfTime;
      if (end > latestEnd) latestEnd = end;
      return { startedAt, latestEnd };
    });
}

/** Some claimed session starts before this one ends, and ends after it starts: by bisection. */
function sharesTime(
  session: SessionRow,
  claimed: readonly { startedAt: string; latestEnd: string }[] = [],
): boolean {
  const end = session.endedAt ?? endOfTime;
  let low = 0;
  let high = claimed.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((claimed[middle]?.startedAt ?? '') < end) low = middle + 1;
    else high = middle;
  }
  return low > 0 && (claimed[low - 1]?.latestEnd ?? '') > session.startedAt;
}
