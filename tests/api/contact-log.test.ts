import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { runProgram } from '../../src/commands/runProgram.js';
import { readConfig } from '../../src/config.js';
import { carried } from '../support/carried.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('a contact log on %s', (engine) => {
  let api: TestApi;
  let rig: string;
  let other: string;
  let number = 0;
  beforeAll(async () => {
    api = await testApi(engine);
  });
  afterAll(() => api?.close());
  /** One record; each test talks to stations of its own. */
  function contact(call: string, day: string, time: string, more: Record<string, string> = {}) {
    const fields = {
      call: `${call}/${number}`,
      qso_date: day,
      time_on: time,
      band: '40M',
      mode: 'CW',
      ...more,
    };
    const tags = Object.entries(fields).map(([name, value]) => `<${name}:${value.length}>${value}`);
    return `${tags.join(' ')} <eor>\n`;
  }

  beforeEach(async () => {
    number += 1;
    const named = (letter: string) => ({ inventoryNumber: `${letter}-${number}` });
    rig = (await carried(api, 'createRig', { ...named('R'), name: `Larkmoor ${number}` }, 'rig'))
      .id;
    other = (await carried(api, 'createRig', named('Q'), 'rig')).id;
  });

  const bring = async (adi: string, given: object = {}) =>
    (
      await api.ask(
        `mutation ($input: ImportContactLogInput!) { importContactLog(input: $input) {
           report { contactsRead contactsLoaded duplicateCount problemCount
             days { inventoryNumber day contacts hours } duplicates { offset line message }
             leftOut { contacts reason } rigTexts { text contacts inventoryNumber isLeftOut } fieldsLeftOut { name count }
             problems { offset line message } basis { method assumptions } }
           problems { code message path } } }`,
        { input: { adi, isDryRun: false, ...given } },
      )
    ).importContactLog;
  const useOf = async (id: string) =>
    (
      await api.ask(
        `query ($id: ID!) { node(id: $id) { ... on Rig { use { hours contacts uses }
           uses { nodes { id version startedAt minutes contacts band mode } } } } }`,
        { id },
      )
    ).node;
  const evening = () =>
    contact('ON4UN', '20260301', '2000', { my_rig: `r-${number}`, time_off: '2010' }) +
    contact('DL1XYZ', '20260301', '2045', { my_rig: `Larkmoor ${number}`, band: '20M' }) +
    contact('F5ABC', '20260301', '220030', { my_rig: `R-${number}`, rst_sent: '599' }) +
    contact('PA0QRS', '20260302', '1900', { my_rig: `Q-${number}` });

  it('is counted per rig and day, with hours from first to last by the gap', async () => {
    const { report, problems } = await bring(evening());
    expect(problems).toEqual([]);
    expect(report).toMatchObject({ contactsRead: 4, contactsLoaded: 4, duplicateCount: 0 });
    expect(report.days).toEqual([
      { inventoryNumber: `R-${number}`, day: '2026-03-01', contacts: 3, hours: 0.77 },
      { inventoryNumber: `Q-${number}`, day: '2026-03-02', contacts: 1, hours: 0.02 },
    ]);
    expect(report.basis.method).toContain('more than 60 minutes');
    expect(report.fieldsLeftOut).toEqual([{ name: 'RST_SENT', count: 1 }]);
    const { use, uses } = await useOf(rig);
    expect(use).toEqual({ hours: 0.77, contacts: 3, uses: 2 });
    expect(uses.nodes).toMatchObject([
      { startedAt: '2026-03-01T22:00:30.000Z', minutes: 1, contacts: 1, band: '40m', mode: 'CW' },
      { startedAt: '2026-03-01T20:00:00.000Z', minutes: 45, contacts: 2, band: null, mode: 'CW' },
    ]);
  });

  it('a dry run tells the same and changes nothing', async () => {
    const { report } = await bring(evening(), { isDryRun: true });
    expect(report).toMatchObject({ contactsLoaded: 0, days: [{ contacts: 3 }, { contacts: 1 }] });
    expect((await useOf(rig)).use.uses).toBe(0);
  });

  it('counts nothing twice: in one log, again, or twice at once', async () => {
    const adi = evening() + contact('on4un', '20260301', '200059', { my_rig: `R-${number}` });
    const answers = await Promise.all([bring(adi), bring(adi)]);
    const loaded = answers.map(({ report }) => report.contactsLoaded).sort();
    expect(loaded).toEqual([0, 4]);
    const { report } = await bring(adi);
    expect(report).toMatchObject({ contactsLoaded: 0, duplicateCount: 5, days: [] });
    expect((await useOf(rig)).use.contacts).toBe(3);
    const [first] = answers.map((one) => one.report).filter((one) => one.contactsLoaded === 4);
    expect(first.duplicates).toEqual([
      { offset: evening().length, line: 5, message: 'As the one at 0.' },
    ]);
  });

  it('a longer log goes on with the use of the shorter one, and joins what were two', async () => {
    await bring(evening());
    const more = contact('OK1AA', '20260301', '2120', { my_rig: `R-${number}` });
    const { report } = await bring(evening() + more);
    expect(report).toMatchObject({ contactsLoaded: 1, duplicateCount: 4 });
    // 20:00 to 22:00:30, and the minute of the last contact: uses are kept in whole minutes.
    expect((await useOf(rig)).use).toEqual({ hours: 2.03, contacts: 4, uses: 1 });
    expect((await bring(evening() + more)).report.contactsLoaded).toBe(0);
  });

  it('what was written down by hand is not counted twice', async () => {
    const use = { rigId: rig, startedAt: '2026-03-01T20:05:00Z', hours: 1, contacts: 2 };
    const written = await carried(api, 'recordUse', use, 'use', '{ id version }');
    const { report } = await bring(evening());
    expect(report.leftOut).toMatchObject([{ contacts: 2 }]);
    expect(report.leftOut[0].reason).toContain('written down by hand');
    expect(report.contactsLoaded).toBe(2);
    await carried(api, 'changeUse', { ...written, hours: 0, contacts: 0 }, 'use');
    expect((await bring(evening())).report.contactsLoaded).toBe(2);
    expect((await useOf(rig)).use.contacts).toBe(3);
  });

  it('a rig that is not known is one problem; said which it is, or left out, it is none', async () => {
    const adi =
      contact('ON4UN', '20260301', '2000', { my_rig: 'Old Faithful' }) +
      contact('DL1XYZ', '20260301', '2010', { my_rig: 'old faithful' }) +
      contact('F5ABC', '20260301', '2020');
    const { report, problems } = await bring(adi);
    expect(problems).toMatchObject([{ code: 'INVALID', path: ['adi'] }]);
    expect(report.problems.map(({ message }: any) => message)).toEqual([
      expect.stringContaining('“Old Faithful” (contacts: 2)'),
      expect.stringContaining('Say which rig it was'),
    ]);
    expect(report.rigTexts).toEqual([
      { text: 'Old Faithful', contacts: 2, inventoryNumber: null, isLeftOut: false },
      { text: null, contacts: 1, inventoryNumber: null, isLeftOut: false },
    ]);
    expect((await useOf(rig)).use.uses).toBe(0);
    const rigs = [{ text: 'Old Faithful', rigId: rig }];
    const said = await bring(adi, { rigs, rigId: other });
    expect(said.report.rigTexts.map((one: any) => one.inventoryNumber)).toEqual([
      `R-${number}`,
      `Q-${number}`,
    ]);
    expect(said.report).toMatchObject({ contactsLoaded: 3, problemCount: 0 });
    expect((await useOf(rig)).use.contacts).toBe(2);
    const ignored = await bring(adi, { ignore: ['OLD FAITHFUL'], rigId: other });
    expect(ignored.report).toMatchObject({ contactsLoaded: 0, duplicateCount: 1 });
    expect(ignored.report.rigTexts[0]).toMatchObject({ inventoryNumber: null, isLeftOut: true });
    expect(ignored.report.leftOut.reduce((sum: number, one: any) => sum + one.contacts, 0)).toBe(2);
  });

  it('tells everything that is wrong at once, by place, and counts nothing', async () => {
    const adi =
      '<call:9>ON4UN<eor>\n' +
      contact('DL1XYZ', '20260231', '2575', { my_rig: `R-${number}` }) +
      contact('F5ABC', '20990101', '2000', { my_rig: `R-${number}` });
    const { report } = await bring(adi);
    expect(report.problems.map(({ line }: any) => line)).toEqual([1, 1, 1, 2, 2, 3]);
    expect((await useOf(rig)).use.uses).toBe(0);
    expect((await bring('')).report.problems[0].message).toContain('There is no contact');
    expect((await bring('<?xml version="1.0"?><ADX/>')).report.problems[0].message).toContain(
      'ADX',
    );
    const huge = await bring('x'.repeat(1_000_001));
    expect(huge).toMatchObject({ report: null, problems: [{ path: ['adi'] }] });
    expect((await bring('', { gapMinutes: 0 })).problems[0].path).toEqual(['gapMinutes']);
    expect((await bring('', { rigId: 'x' })).problems[0].path).toEqual(['rigId']);
  });

  it('is brought in by the command line too, and nobody’s call is kept', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'reglow-log-'));
    const file = join(folder, 'log.adi');
    writeFileSync(file, `From the shack\n<adif_ver:5>3.1.4 <eoh>\n${evening()}`);
    const printed: string[] = [];
    const run = (...more: string[]) =>
      runProgram(['import-log', file, ...more], {
        config: readConfig({ REGLOW_DATABASE: api.url }),
        nowMs: () => api.nowMs,
        print: (line) => printed.push(line),
        say: (line) => printed.push(line),
        repaint: null,
        untilStopped: () => new Promise<void>(() => undefined),
        isDebugging: false,
      });
    try {
      await run('--dry-run');
      expect(printed.join('\n')).toContain('4 contacts read, 0 counted now.');
      await run('--gap-minutes', '90');
      expect(printed.join('\n')).toContain('4 contacts read, 4 counted now.');
      expect((await useOf(rig)).use).toMatchObject({ contacts: 3, uses: 1 });
    } finally {
      rmSync(folder, { recursive: true });
    }
    const kept = await api.database.reader.rows(
      `SELECT id FROM change WHERE "after" LIKE '%F5ABC%' OR "before" LIKE '%F5ABC%'`,
    );
    expect(kept).toEqual([]);
  });
});
