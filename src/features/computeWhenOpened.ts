import type { Database } from '../db/database.js';
import { queryInWork } from '../db/queryInWork.js';
import { rebuildComputed } from './rebuildComputed.js';

/**
 * Raise it with every change after which the same records give another standing or another text to
 * be found by: a collection that was computed by another version is computed anew when opened.
 */
export const computedVersion = 1;

interface Kept {
  version: number;
}

/** At the first opening by a program that computes otherwise; all of it or nothing. */
export async function computeWhenOpened(database: Database, nowMs: number): Promise<void> {
  const [kept] = await database.reader.rows<Kept>(
    `SELECT version AS "version" FROM computed_version WHERE subject = 'items'`,
  );
  if (kept?.version === computedVersion) return;
  // No record changes here, so that nothing of this is written into the log.
  const act = { action: 'recompute', actorId: null, now: new Date(nowMs).toISOString() };
  await database.write(act, async (work) => {
    // Writes before it reads: who opens the collection at the same time waits here.
    const changed = await queryInWork<Kept>(
      work,
      `INSERT INTO computed_version (subject, version) VALUES ('items', ?)
       ON CONFLICT (subject) DO UPDATE SET version = excluded.version
         WHERE computed_version.version <> excluded.version
       RETURNING version AS "version"`,
      [computedVersion],
    );
    if (changed.length > 0) await rebuildComputed(work);
  });
}
