import type { RowSource } from '../../db/rowSource.js';
import type { Relation } from '../../api/kit/typeReads.js';
import { workedIntervals } from '../../domain/hours/workedIntervals.js';
import { isForgottenTimer } from './sessionBounds.js';
import { breaksOf, timesOf, type SessionRow } from './sessionRows.reads.js';

/** Worked time of each session up to now; null for a timer whose end must be asked for. */
export const netSeconds: Relation = async ({ database: { reader }, nowMs }, parents) => {
  const rows = parents as unknown as SessionRow[];
  const query: RowSource['rows'] = (sql, parameters) => reader.rows(sql, parameters);
  const breaks = await breaksOf(query, reader.dialect, rows);
  const values = rows.map((row) => {
    const session = timesOf(row, breaks);
    return isForgottenTimer(session, nowMs)
      ? null
      : workedIntervals(session, nowMs).reduce(
          (sum, { startedAtMs, endedAtMs }) => sum + (endedAtMs - startedAtMs) / 1000,
          0,
        );
  });
  return { values, children: [], childType: null };
};
