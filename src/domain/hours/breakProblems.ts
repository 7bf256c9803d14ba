import type { Problem } from '../problem.js';
import type { WorkSession } from './workSession.js';

export type BreakProblemCode =
  | 'BREAK_INSTANT_NOT_RECORDED'
  | 'BREAK_ENDS_BEFORE_START'
  | 'BREAK_OUTSIDE_SESSION'
  | 'BREAK_STILL_OPEN'
  | 'BREAKS_OVERLAP';

/** What is wrong with the breaks of a session, all at once; empty when nothing is. */
export function breakProblems(
  session: Pick<WorkSession, 'startedAtMs' | 'endedAtMs' | 'breaks'>,
): Problem<BreakProblemCode>[] {
  const problems: Problem<BreakProblemCode>[] = [];
  const add = (code: BreakProblemCode, index: number, field: string, message: string) =>
    problems.push({ code, message, path: ['breaks', String(index), field], severity: 'ERROR' });
  const sessionEnd = session.endedAtMs ?? Infinity;

  session.breaks.forEach((pause, index) => {
    const label = `Break ${index + 1}`;
    const { startedAtMs, endedAtMs } = pause;
    if (!Number.isFinite(startedAtMs)) {
      add('BREAK_INSTANT_NOT_RECORDED', index, 'startedAt', `Say when break ${index + 1} started.`);
    }
    if (endedAtMs !== null && !Number.isFinite(endedAtMs)) {
      add('BREAK_INSTANT_NOT_RECORDED', index, 'endedAt', `Say when break ${index + 1} ended.`);
    }
    if (endedAtMs === null && session.endedAtMs !== null) {
      add(
        'BREAK_STILL_OPEN',
        index,
        'endedAt',
        `${label} has no end though the session has. Enter its end.`,
      );
    }
    if (endedAtMs !== null && endedAtMs <= startedAtMs) {
      add('BREAK_ENDS_BEFORE_START', index, 'endedAt', `${label} must end after it starts.`);
    }
    if (startedAtMs < session.startedAtMs || startedAtMs >= sessionEnd) {
      add(
        'BREAK_OUTSIDE_SESSION',
        index,
        'startedAt',
        `${label} starts outside the session. Move the break or the session.`,
      );
    }
    if (endedAtMs !== null && endedAtMs > sessionEnd) {
      add(
        'BREAK_OUTSIDE_SESSION',
        index,
        'endedAt',
        `${label} ends after the session. Move the break or the session.`,
      );
    }
  });

  const inTimeOrder = session.breaks
    .map((pause, index) => ({ index, start: pause.startedAtMs, end: pause.endedAtMs ?? Infinity }))
    .sort((a, b) => a.start - b.start || a.index - b.index);
  let latest = { index: -1, end: -Infinity };
  for (const { index, start, end } of inTimeOrder) {
    if (start < latest.end) {
      add(
        'BREAKS_OVERLAP',
        index,
        'startedAt',
        `Break ${index + 1} begins before break ${latest.index + 1} has ended. Join them or correct one.`,
      );
    }
    if (end > latest.end) latest = { index, end };
  }
  return problems;
}
