import { IANAZone } from 'luxon';
import type { Problem } from '../problem.js';
import { breakProblems, type BreakProblemCode } from './breakProblems.js';
import type { WorkSession } from './workSession.js';

export type SessionProblemCode =
  | BreakProblemCode
  | 'UNKNOWN_ZONE'
  | 'INSTANT_NOT_RECORDED'
  | 'STARTS_IN_FUTURE'
  | 'ENDS_IN_FUTURE'
  | 'ENDS_BEFORE_START'
  | 'LONGER_THAN_24_HOURS';

export type SessionAsEntered = Pick<WorkSession, 'startedAtMs' | 'endedAtMs' | 'zone' | 'breaks'>;

const DAY_MS = 24 * 60 * 60 * 1000;

/** Everything that is wrong with a session as entered, all at once; empty when nothing is. */
export function sessionProblems(
  session: SessionAsEntered,
  nowMs: number,
): Problem<SessionProblemCode>[] {
  const { startedAtMs, endedAtMs, zone } = session;
  const problems: Problem<SessionProblemCode>[] = [];
  const add = (
    code: SessionProblemCode,
    field: string,
    message: string,
    severity: 'ERROR' | 'WARNING' = 'ERROR',
  ) => problems.push({ code, message, path: [field], severity });

  // Offsets such as "+01:00" are refused: they do not know when the clocks change.
  if (!/^[A-Za-z]/.test(zone) || !IANAZone.isValidZone(zone)) {
    add(
      'UNKNOWN_ZONE',
      'zone',
      `"${zone}" is not a time zone known here. Give an IANA name such as Europe/Berlin.`,
    );
  }
  if (!Number.isFinite(startedAtMs)) {
    add('INSTANT_NOT_RECORDED', 'startedAt', 'Say when the session started.');
  }
  if (endedAtMs !== null && !Number.isFinite(endedAtMs)) {
    add(
      'INSTANT_NOT_RECORDED',
      'endedAt',
      'Say when the session ended, or leave the end empty while it runs.',
    );
  }
  if (startedAtMs > nowMs) {
    add(
      'STARTS_IN_FUTURE',
      'startedAt',
      'The session starts in the future. Enter it once it has begun.',
    );
  }
  if (endedAtMs !== null && endedAtMs <= startedAtMs) {
    add('ENDS_BEFORE_START', 'endedAt', 'The session must end after it starts.');
  } else if (endedAtMs !== null && endedAtMs > nowMs) {
    add(
      'ENDS_IN_FUTURE',
      'endedAt',
      'The session ends in the future. Leave the end empty while it runs.',
    );
  }
  if ((endedAtMs ?? nowMs) - startedAtMs > DAY_MS) {
    add(
      'LONGER_THAN_24_HOURS',
      'endedAt',
      'The session is longer than 24 hours. Was the timer left running? Correct the end, or confirm it.',
      'WARNING',
    );
  }
  return [...problems, ...breakProblems(session)];
}
