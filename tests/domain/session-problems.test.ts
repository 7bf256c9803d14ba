import { describe, expect, it } from 'vitest';
import { sessionProblems } from '../../src/domain/hours/sessionProblems.js';
import { HOUR_MS, workSession } from '../support/workStory.js';

const NOW_MS = Date.UTC(2024, 4, 2, 12);
const hoursAgo = (hours: number) => NOW_MS - hours * HOUR_MS;
const found = (told: Parameters<typeof workSession>[0]) =>
  sessionProblems(workSession({ zone: 'Europe/Berlin', ...told }), NOW_MS).map(
    ({ code, path, severity }) => `${severity} ${code} ${path.join('.')}`,
  );

describe('a session as entered', () => {
  it('has no problems when it is in order, ended or running', () => {
    expect(
      found({
        startedAtMs: hoursAgo(3),
        endedAtMs: hoursAgo(1),
        breaks: [
          { startedAtMs: hoursAgo(2.5), endedAtMs: hoursAgo(2) },
          { startedAtMs: hoursAgo(2), endedAtMs: hoursAgo(1.5) },
        ],
      }),
    ).toEqual([]);
    expect(
      found({ startedAtMs: hoursAgo(3), breaks: [{ startedAtMs: hoursAgo(1), endedAtMs: null }] }),
    ).toEqual([]);
  });

  it.each(['Mars/Olympus', '+01:00', ''])('must name its zone: "%s" is none', (zone) => {
    expect(found({ startedAtMs: hoursAgo(1), zone })).toEqual(['ERROR UNKNOWN_ZONE zone']);
  });

  it('cannot start or end in the future', () => {
    expect(found({ startedAtMs: hoursAgo(-1) })).toEqual(['ERROR STARTS_IN_FUTURE startedAt']);
    expect(found({ startedAtMs: hoursAgo(1), endedAtMs: hoursAgo(-1) })).toEqual([
      'ERROR ENDS_IN_FUTURE endedAt',
    ]);
  });

  it('must end after it starts', () => {
    for (const endedAtMs of [hoursAgo(2), hoursAgo(3)]) {
      expect(found({ startedAtMs: hoursAgo(2), endedAtMs })).toEqual([
        'ERROR ENDS_BEFORE_START endedAt',
      ]);
    }
  });

  it('longer than a day is asked about, not refused', () => {
    expect(found({ startedAtMs: hoursAgo(25), endedAtMs: hoursAgo(1) })).toEqual([]);
    expect(found({ startedAtMs: hoursAgo(26), endedAtMs: hoursAgo(1) })).toEqual([
      'WARNING LONGER_THAN_24_HOURS endedAt',
    ]);
    expect(found({ startedAtMs: hoursAgo(25) })).toEqual(['WARNING LONGER_THAN_24_HOURS endedAt']);
  });

  it('has its breaks inside it, each with an end, none over another', () => {
    expect(
      found({
        startedAtMs: hoursAgo(8),
        endedAtMs: hoursAgo(2),
        breaks: [
          { startedAtMs: hoursAgo(9), endedAtMs: hoursAgo(7) },
          { startedAtMs: hoursAgo(7.5), endedAtMs: hoursAgo(6) },
          { startedAtMs: hoursAgo(5), endedAtMs: hoursAgo(5.5) },
          { startedAtMs: hoursAgo(4), endedAtMs: hoursAgo(1) },
          { startedAtMs: hoursAgo(1), endedAtMs: null },
        ],
      }),
    ).toEqual([
      'ERROR BREAK_OUTSIDE_SESSION breaks.0.startedAt',
      'ERROR BREAK_ENDS_BEFORE_START breaks.2.endedAt',
      'ERROR BREAK_OUTSIDE_SESSION breaks.3.endedAt',
      'ERROR BREAK_STILL_OPEN breaks.4.endedAt',
      'ERROR BREAK_OUTSIDE_SESSION breaks.4.startedAt',
      'ERROR BREAKS_OVERLAP breaks.1.startedAt',
    ]);
  });

  it('is told everything at once, in sentences', () => {
    const problems = sessionProblems(
      workSession({ startedAtMs: NaN, endedAtMs: NaN, zone: 'nowhere' }),
      NOW_MS,
    );
    expect(problems.map(({ code }) => code)).toEqual([
      'UNKNOWN_ZONE',
      'INSTANT_NOT_RECORDED',
      'INSTANT_NOT_RECORDED',
    ]);
    for (const { message } of problems) expect(message).toMatch(/^.+\.$/);
  });
});
