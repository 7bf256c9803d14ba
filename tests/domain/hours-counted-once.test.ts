import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countedSlices } from '../../src/domain/hours/countedSlices.js';
import { tallySeconds } from '../../src/domain/hours/tallySeconds.js';
import { tallySecondsByWeek } from '../../src/domain/hours/tallySecondsByWeek.js';
import type { WorkSession } from '../../src/domain/hours/workSession.js';
import { HOUR_MS, MINUTE_MS, workSession } from '../support/workStory.js';

const at = (minute: number) => Date.UTC(2024, 0, 31, 20) + minute * MINUTE_MS;
const seconds = (rows: readonly { readonly startedAtMs: number; readonly endedAtMs: number }[]) =>
  rows.reduce((sum, row) => sum + (row.endedAtMs - row.startedAtMs) / 1000, 0);

describe('hours at the bench', () => {
  it('are net of breaks', () => {
    const session = workSession({
      startedAtMs: at(0),
      endedAtMs: at(90),
      breaks: [
        { startedAtMs: at(60), endedAtMs: at(70) },
        { startedAtMs: at(20), endedAtMs: at(25) },
      ],
    });
    expect(seconds(countedSlices([session], at(1000)).slices)).toBe(75 * 60);
  });

  it('run up to now while the timer runs, and stop at a break that still lasts', () => {
    const running = workSession({ startedAtMs: at(0) });
    const resting = workSession({
      startedAtMs: at(0),
      personId: 'friend',
      breaks: [{ startedAtMs: at(10), endedAtMs: null }],
    });
    const { slices } = countedSlices([running, resting], at(45));
    expect(slices.map((slice) => [slice.personId, seconds([slice])])).toEqual([
      ['collector', 45 * 60],
      ['friend', 10 * 60],
    ]);
  });

  it('as they stood on an earlier day leave out what came later', () => {
    const session = workSession({ startedAtMs: at(0), endedAtMs: at(120) });
    expect(seconds(countedSlices([session], at(30)).slices)).toBe(30 * 60);
    expect(countedSlices([session], at(-5)).slices).toEqual([]);
  });

  it('of one person count once, for the session that started first', () => {
    const cleaning = workSession({ id: 'a', startedAtMs: at(0), endedAtMs: at(60) });
    const aligning = workSession({
      id: 'b',
      startedAtMs: at(40),
      endedAtMs: at(100),
      itemId: 'vfo',
    });
    const { slices, overlaps, repeatedSeconds } = countedSlices([aligning, cleaning], at(1000));
    expect(slices.map((slice) => [slice.itemId, seconds([slice])])).toEqual([
      ['rig', 60 * 60],
      ['vfo', 40 * 60],
    ]);
    expect(overlaps).toEqual([
      { personId: 'collector', firstSessionId: 'a', secondSessionId: 'b', seconds: 20 * 60 },
    ]);
    expect(repeatedSeconds).toBe(20 * 60);
  });

  it('spent on one set during the break of another belong to the one that was worked on', () => {
    const cleaning = workSession({
      startedAtMs: at(0),
      endedAtMs: at(60),
      breaks: [{ startedAtMs: at(20), endedAtMs: at(40) }],
    });
    const aligning = workSession({ startedAtMs: at(10), endedAtMs: at(50), itemId: 'vfo' });
    const { slices } = countedSlices([cleaning, aligning], at(1000));
    expect(slices.map((slice) => [slice.itemId, seconds([slice]) / 60])).toEqual([
      ['rig', 20],
      ['vfo', 20],
      ['rig', 20],
    ]);
  });

  it('of two people at one bench count for both', () => {
    const both = ['collector', 'friend'].map((personId) =>
      workSession({ personId, startedAtMs: at(0), endedAtMs: at(60) }),
    );
    const { slices, overlaps } = countedSlices(both, at(1000));
    expect(seconds(slices)).toBe(2 * 60 * 60);
    expect(overlaps).toEqual([]);
  });

  it('are read in whole seconds, so that parts add up to the whole', () => {
    const first = workSession({ startedAtMs: at(0) + 900, endedAtMs: at(1) + 100 });
    const second = workSession({ startedAtMs: at(1) + 100, endedAtMs: at(2) + 999 });
    const { slices } = countedSlices([first, second], at(1000));
    expect(slices.map((slice) => seconds([slice]))).toEqual([60, 60]);
  });

  it('are counted without listing every pair of a mistaken import', () => {
    const copies = Array.from({ length: 300 }, () =>
      workSession({ startedAtMs: at(0), endedAtMs: at(60) }),
    );
    const counted = countedSlices(copies, at(1000));
    expect(seconds(counted.slices)).toBe(60 * 60);
    expect(counted.overlaps).toHaveLength(10_000);
    expect(counted.isOverlapListComplete).toBe(false);
    expect(counted.repeatedSeconds).toBe(299 * 60 * 60);
  });

  it('of 200,000 sessions are counted in time that grows with their number', () => {
    const many = Array.from({ length: 200_000 }, (_, index) =>
      workSession({
        personId: `person-${index % 20}`,
        startedAtMs: Math.floor(index / 20) * HOUR_MS,
        endedAtMs: Math.floor(index / 20) * HOUR_MS + 90 * MINUTE_MS,
      }),
    );
    const { slices, overlaps } = countedSlices(many, Date.UTC(2030, 0, 1));
    expect(seconds(slices)).toBe(20 * (10_000 * 3600 + 1800));
    expect(overlaps).toHaveLength(10_000);
  }, 20_000);
});

describe('laws of the count', () => {
  const NOW_MINUTE = 250;
  const minute = fc.integer({ min: 0, max: 300 });
  const end = fc.option(minute, { nil: null, freq: 6 });
  const sessions = fc
    .array(
      fc.record({
        person: fc.constantFrom('ann', 'ben'),
        item: fc.constantFrom('rig', 'vfo'),
        zone: fc.constantFrom('UTC', 'Europe/Berlin', 'Asia/Kathmandu'),
        start: minute,
        end,
        breaks: fc.array(fc.record({ start: minute, end }), { maxLength: 3 }),
      }),
      { maxLength: 12 },
    )
    .map((rows) =>
      rows.map((row, index): WorkSession => ({
        id: `s${String(index).padStart(2, '0')}`,
        personId: row.person,
        itemId: row.item,
        taskId: null,
        taskKind: 'CLEANING',
        zone: row.zone,
        startedAtMs: at(row.start),
        endedAtMs: row.end === null ? null : at(row.end),
        breaks: row.breaks.map((pause) => ({
          startedAtMs: at(pause.start),
          endedAtMs: pause.end === null ? null : at(pause.end),
        })),
      })),
    );

  const isAtWork = (session: WorkSession, instantMs: number) =>
    instantMs >= session.startedAtMs &&
    instantMs < Math.min(session.endedAtMs ?? Infinity, at(NOW_MINUTE)) &&
    !session.breaks.some(
      (pause) => instantMs >= pause.startedAtMs && instantMs < (pause.endedAtMs ?? Infinity),
    );

  it('minute by minute, the count agrees with asking every session in turn', () => {
    fc.assert(
      fc.property(sessions, (rows) => {
        const expectedOwners: string[] = [];
        const expectedShared = new Map<string, number>();
        for (const personId of ['ann', 'ben']) {
          for (let now = 0; now < 300; now += 1) {
            const atWork = rows
              .filter((row) => row.personId === personId && isAtWork(row, at(now)))
              .sort((a, b) => a.startedAtMs - b.startedAtMs || (a.id < b.id ? -1 : 1));
            if (atWork[0] !== undefined) expectedOwners.push(`${personId} ${now} ${atWork[0].id}`);
            atWork.forEach((one, index) =>
              atWork.slice(index + 1).forEach((other) => {
                const pair = `${one.id} ${other.id}`;
                expectedShared.set(pair, (expectedShared.get(pair) ?? 0) + 60);
              }),
            );
          }
        }
        const { slices, overlaps } = countedSlices(rows, at(NOW_MINUTE));
        const owners = slices.flatMap((slice) =>
          Array.from(
            { length: (slice.endedAtMs - slice.startedAtMs) / MINUTE_MS },
            (_, index) =>
              `${slice.personId} ${(slice.startedAtMs - at(0)) / MINUTE_MS + index} ${slice.sessionId}`,
          ),
        );
        expect(owners).toEqual(expectedOwners);
        expect(
          new Map(
            overlaps.map((pair) => [
              `${pair.firstSessionId} ${pair.secondSessionId}`,
              pair.seconds,
            ]),
          ),
        ).toEqual(expectedShared);
      }),
      { numRuns: 300 },
    );
  });

  it('the order of the rows changes nothing', () => {
    const rowsTwice = sessions.chain((rows) =>
      fc.tuple(
        fc.constant(rows),
        fc.shuffledSubarray(rows, { minLength: rows.length, maxLength: rows.length }),
      ),
    );
    fc.assert(
      fc.property(rowsTwice, ([rows, shuffled]) => {
        expect(countedSlices(shuffled, at(NOW_MINUTE))).toEqual(
          countedSlices(rows, at(NOW_MINUTE)),
        );
      }),
    );
  });

  it('months and weeks each add up to the whole', () => {
    fc.assert(
      fc.property(sessions, (rows) => {
        const { slices } = countedSlices(rows, at(NOW_MINUTE));
        const whole = seconds(slices);
        const total = (tallies: readonly { readonly seconds: number }[]) =>
          tallies.reduce((sum, tally) => sum + tally.seconds, 0);
        expect(total(tallySeconds(slices))).toBe(whole);
        expect(total(tallySecondsByWeek(slices))).toBe(whole);
      }),
    );
  });
});
