import type { ApiContext } from '../../api/kit/apiContext.js';
import { one } from '../../api/kit/relations.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import type { RowSource } from '../../db/rowSource.js';
import { countedSlices } from '../../domain/hours/countedSlices.js';
import { isForgottenTimer } from './sessionBounds.js';
import { withBreaks, type SessionRow } from './sessionRows.reads.js';
import { readSessionsAround } from './sessionsAround.reads.js';

/** The sessions that claim time of each of these, in two statements for all of them. */
export const sessionOverlaps: Relation = async (context, parents) => {
  const bySession = new Map<string, Row[]>(parents.map(({ id }) => [id, []]));
  const { overlaps } = await timeAround(context, parents);
  for (const { firstSessionId: first, secondSessionId: second, seconds } of overlaps) {
    bySession.get(first)?.push({ id: `${first} ${second}`, sessionId: second, seconds });
    bySession.get(second)?.push({ id: `${second} ${first}`, sessionId: first, seconds });
  }
  const values = parents.map(({ id }) => bySession.get(id) ?? []);
  return { values, children: values.flat(), childType: 'SessionOverlap' };
};

/** Whether `sessionOverlaps` could list them all. */
export const areOverlapsComplete: Relation = async (context, parents) => {
  const { isOverlapListComplete } = await timeAround(context, parents);
  return { values: parents.map(() => isOverlapListComplete), children: [], childType: null };
};

async function timeAround({ database: { reader }, nowMs }: ApiContext, parents: readonly Row[]) {
  const { dialect } = reader;
  const query: RowSource['rows'] = (sql, parameters) => reader.rows(sql, parameters);
  const own = parents as unknown as SessionRow[];
  const around = await readSessionsAround(query, dialect, own);
  const sessions = await withBreaks(query, dialect, [...own, ...around]);
  // Nobody knows how long a forgotten timer really ran, so it claims nothing yet.
  const known = sessions.filter((session) => !isForgottenTimer(session, nowMs));
  return countedSlices(known, nowMs);
}

/** An overlap is no record: it is read with its session or not at all. */
export const sessionOverlapReads: TypeReads = {
  typeName: 'SessionOverlap',
  byIds: () => Promise.resolve([]),
  relations: { session: one('WorkSession', 'sessionId') },
};
