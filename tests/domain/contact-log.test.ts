import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loggedContact, type LoggedContact } from '../../src/domain/contactLog/loggedContact.js';
import { logSpells, minutesOf } from '../../src/domain/contactLog/logSpells.js';
import { readAdi } from '../../src/domain/contactLog/readAdi.js';

const MINUTE_MS = 60_000;

describe('the text of a contact log', () => {
  const problemsIn = (text: string) =>
    readAdi(text).problems.map(({ offset, message }) => [offset, message]);

  it('names every length that does not fit by its offset, and reads on', () => {
    const text = '<call:9>ON4UN<band:3>40M<eor><call:x>DL1<eor><call>F5<eor><call:5>ON4UN';
    expect(problemsIn(text)).toEqual([
      [0, expect.stringMatching(/^CALL says that it is 9 .* reaches over <band:3>; “ON4UN” has 5/)],
      [29, expect.stringContaining('“x” for its length')],
      [45, expect.stringContaining('no length')],
      [58, expect.stringContaining('not ended by <eor>')],
    ]);
    const { records } = readAdi(text);
    expect(records.map(({ fields }) => fields.get('CALL')?.value)).toEqual(['ON4UN']);
  });

  it('a length that is too short leaves something over, which is told', () => {
    const { remarks, problems } = readAdi('<call:3>ON4UN <band:3>40M <eor>');
    expect(problems).toEqual([]);
    expect(remarks).toEqual([{ offset: 11, message: expect.stringContaining('“UN”') }]);
  });

  it.each(['', '   ', 'no log at all', '<', '<<>>', '<eor><eor>', '<:5>abcde', '\u0000<call:1>'])(
    'is read to its end whatever it is: %j',
    (text) => {
      expect(readAdi(text).records).toEqual([]);
    },
  );

  it('gives back what was written, for any data that holds no tag', () => {
    const data = fc.string({ maxLength: 30 }).filter((text) => !/<(eo[rh]|\w+:\d)/i.test(text));
    fc.assert(
      fc.property(fc.array(fc.array(data, { minLength: 1, maxLength: 6 })), (records) => {
        const text = records
          .map((fields) => fields.map((one, index) => `<F${index}:${one.length}>${one}`).join('\n'))
          .map((fields) => `${fields}<EOR>\n`)
          .join('');
        const log = readAdi(text);
        expect(log.problems).toEqual([]);
        expect(
          log.records.map(({ fields }) => [...fields.values()].map(({ value }) => value)),
        ).toEqual(records);
      }),
    );
  });

  it('never fails, and every offset lies in the text', () => {
    const piece = fc.constantFrom('<call:5>', 'ON4UN', '<eor>', '<eoh>', '<', '>', ':', '9', '\n');
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 40 }), (pieces) => {
        const text = pieces.join('');
        const { problems, remarks } = readAdi(text);
        for (const { offset } of [...problems, ...remarks]) {
          expect(offset).toBeGreaterThanOrEqual(0);
          expect(offset).toBeLessThan(text.length);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('a contact of a log', () => {
  const contact = (fields: string): LoggedContact => {
    const [record] = readAdi(`<call:5>on4un<qso_date:8>20260301${fields}<eor>`).records;
    return loggedContact(record ?? { offset: 0, fields: new Map() }) as LoggedContact;
  };
  const lasted = (fields: string): number => {
    const { startedAtMs, endedAtMs } = contact(fields);
    return (endedAtMs - startedAtMs) / MINUTE_MS;
  };

  it('lasts until its end, over midnight too, and on the day that it names', () => {
    expect(lasted('<time_on:4>2355')).toBe(0);
    expect(lasted('<time_on:4>2050<time_off:4>2105')).toBe(15);
    expect(lasted('<time_on:4>2355<time_off:4>0010')).toBe(15);
    expect(lasted('<time_on:4>2355<qso_date_off:8>20260303<time_off:4>0010')).toBe(24 * 60 + 15);
    expect(contact('<time_on:4>2355<qso_date_off:8>20260301<time_off:4>2300')).toMatchObject([
      { message: expect.stringContaining('ends before it begins') },
    ]);
  });
});

describe('uses of a rig, from contacts', () => {
  const at = (startedAtMs: number, endedAtMs = startedAtMs) => ({
    startedAtMs: startedAtMs * MINUTE_MS,
    endedAtMs: endedAtMs * MINUTE_MS,
  });

  it('run from the first to the last, and end where nothing was logged for longer than the gap', () => {
    const spells = logSpells([at(200, 205), at(0, 10), at(70), at(131)], 60 * MINUTE_MS);
    expect(spells.map((spell) => [spell.contacts.length, minutesOf(spell)])).toEqual([
      [2, 70],
      [1, 1],
      [1, 5],
    ]);
  });

  it('hold every contact once, do not meet, and are the same in whatever order they were logged', () => {
    const contacts = fc.array(
      fc.tuple(fc.nat(2000), fc.nat(90)).map(([start, long]) => at(start, start + long)),
    );
    fc.assert(
      fc.property(contacts, fc.integer({ min: 1, max: 120 }), (all, gap) => {
        const spells = logSpells(all, gap * MINUTE_MS);
        expect(spells.flatMap(({ contacts: own }) => own)).toHaveLength(all.length);
        for (const [index, { startedAtMs, endedAtMs, contacts: own }] of spells.entries()) {
          for (const one of own) {
            expect(one.startedAtMs).toBeGreaterThanOrEqual(startedAtMs);
            expect(one.endedAtMs).toBeLessThanOrEqual(endedAtMs);
          }
          const next = spells[index + 1];
          if (next) expect(next.startedAtMs - endedAtMs).toBeGreaterThan(gap * MINUTE_MS);
        }
        const times = (list: typeof spells) => list.map((one) => [one.startedAtMs, one.endedAtMs]);
        expect(times(logSpells([...all].reverse(), gap * MINUTE_MS))).toEqual(times(spells));
      }),
    );
  });
});
