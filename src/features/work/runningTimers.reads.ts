import type { ApiContext } from '../../api/kit/apiContext.js';
import type { Row } from '../../api/kit/typeReads.js';
import { workSessionReads } from './workSession.reads.js';

/** Sessions without an end, oldest first. */
export const readRunningTimers = ({ database: { reader } }: ApiContext): Promise<Row[]> =>
  reader.rows<Row>(
    `SELECT ${workSessionReads.columns} FROM work_session
     WHERE work_session.ended_at IS NULL ORDER BY work_session.started_at, work_session.id`,
  );
