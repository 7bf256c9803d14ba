import { setTimeout as pause } from 'node:timers/promises';
import { Refusal } from './refusal.js';

const pauseMs = 100;
const longestWaitMs = 60_000;

const isBusy = (error: unknown): boolean =>
  String((error as { code?: unknown }).code).startsWith('SQLITE_BUSY');

/**
 * Runs a transaction of SQLite, again and again while another program writes to the same file.
 * SQLite would wait by itself, but would stop everything else that this program does meanwhile.
 * @param transaction takes the write lock before it does anything that cannot be done twice.
 * @throws Refusal when the other program has not ended within `waitMs` milliseconds.
 */
export async function waitForWriter<Result>(
  transaction: () => Promise<Result>,
  waitMs = longestWaitMs,
): Promise<Result> {
  const startedAt = performance.now();
  for (;;) {
    try {
      return await transaction();
    } catch (error) {
      if (!isBusy(error)) throw error;
      if (performance.now() - startedAt > waitMs) throw stillBusy(waitMs);
      await pause(pauseMs);
    }
  }
}

const stillBusy = (waitMs: number): Refusal =>
  Refusal.conflict(
    `Another program has been writing to this collection for ${Math.round(waitMs / 1000)} s. ` +
      'Nothing was changed; try again when it has ended.',
  );
