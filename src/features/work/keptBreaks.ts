import type { WorkBreak } from '../../domain/hours/workSession.js';
import type { BreakInput } from './workSession.inputs.js';

/** Breaks as the arithmetic takes them. */
export const breaksOf = (
  breaks: readonly { startedAt: string | Date; endedAt?: string | Date | null }[],
): WorkBreak[] =>
  breaks.map(({ startedAt, endedAt }) => ({
    startedAtMs: new Date(startedAt).getTime(),
    endedAtMs: endedAt ? new Date(endedAt).getTime() : null,
  }));

/** Breaks as they are kept, in time order. */
export const keptBreaks = (breaks: readonly BreakInput[]) =>
  breaks
    .map(({ startedAt, endedAt }) => ({
      startedAt: startedAt.toISOString(),
      endedAt: endedAt?.toISOString() ?? null,
    }))
    .sort((a, b) => (a.startedAt < b.startedAt ? -1 : 1));
