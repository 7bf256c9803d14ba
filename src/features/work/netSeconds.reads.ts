import type { Relation } from '../../api/kit/typeReads.js';
import { workedIntervals } from '../../domain/hours/workedIntervals.js';
import { isForgottenTimer } from './sessionBounds.js';
import { withBreaks, type SessionRow } from './sessionRows.reads.js';

/** Worked time of each session up to now; null for a timer whose end must be asked for. */
export const netSeconds: Relation = async ({ database: { reader }, nowMs }, parents) => {
  const rows = parents as unknown as SessionRow[];
  const sessions = await withBreaks(
    (sql, parameters) => reader.rows(sql, parameters),
    reader.dialect,
    rows,
  );
  const values = sessions.map((session) =>
    isForgottenTimer(session, nowMs)
      ? null
      : workedIntervals(session, nowMs).reduce(
          (sum, { startedAtMs, endedAtMs }) => sum + (endedAtMs - startedAtMs) / 1000,
          0,
        ),
  );
  return { values, children: [], childType: null };
};
