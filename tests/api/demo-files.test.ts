import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { demo } from '../../src/commands/demo.js';
import type { Surroundings } from '../../src/commands/surroundings.js';
import { DemoClock } from '../../src/features/demo/demoClock.js';
import { readDemoFiles } from '../../src/features/demo/demoFiles.js';
import { loadDemo } from '../../src/features/demo/loadDemo.js';
import { seedFolder } from '../../src/features/hazards/seedFolder.js';
import { wallClockAt } from '../support/localClock.js';
import { testApi, type TestApi } from '../support/testApi.js';

const folder = seedFolder('demo');

describe('the clock of the demo collection', () => {
  const clock = new DemoClock('Europe/Dublin', '2026-06-15', '2026-11-25');

  it('moves every day by the same number of days and keeps the time on the wall', () => {
    expect(clock.day('2026-06-01')).toBe('2026-11-11');
    const moved = clock.instant('2026-06-01 19:30').getTime();
    expect(wallClockAt(moved, 'Europe/Dublin')).toBe('2026-11-11T19:30:00');
  });

  it('finds the latest clock changes, which do not move by days', () => {
    // Ireland: last Sundays of October and March, by the rules that Intl carries.
    expect(clock.instant('autumn clock change 00:30').toISOString()).toBe(
      '2026-10-24T23:30:00.000Z',
    );
    expect(clock.instant('spring clock change 00:20').toISOString()).toBe(
      '2026-03-29T00:20:00.000Z',
    );
  });

  it('finds the last night of a month', () => {
    const started = clock.instant('month end, 2 back 22:40');
    expect(started.toISOString()).toBe('2026-09-30T21:40:00.000Z');
    expect(clock.nextTime('00:50', started).toISOString()).toBe('2026-09-30T23:50:00.000Z');
  });

  it('says how a time is written when it cannot read one', () => {
    expect(() => clock.instant('yesterday')).toThrow(/“yesterday” is no time: write 2025-03-14/);
  });
});

describe('the files of the demo collection', () => {
  it('never call anything safe', async () => {
    const names = await readdir(folder, { recursive: true });
    const texts = await Promise.all(
      names
        .filter((name) => name.endsWith('.yaml'))
        .map((name) => readFile(join(folder, name), 'utf8')),
    );
    expect(texts.length).toBeGreaterThan(20);
    expect(texts.filter((text) => /\bun?safe|\bsafe/i.test(text))).toEqual([]);
  });

  it('name the source of every limit and of every rating of a tube', () => {
    const partTypes = readDemoFiles(folder).flatMap((file) => Object.values(file.partTypes));
    const tubes = partTypes.filter(({ kind }) => kind === 'TUBE');
    expect(tubes.length).toBeGreaterThan(10);
    expect(tubes.filter(({ source }) => !source?.includes('data sheets'))).toEqual([]);
    const limits = partTypes.flatMap((partType) => partType.limits);
    expect(limits.filter(({ source }) => !/no source|data sheets/.test(source))).toEqual([]);
  });
});

describe('a broken demo collection', () => {
  let api: TestApi;
  let copy: string;
  beforeEach(async () => {
    api = await testApi('sqlite');
    copy = await mkdtemp(join(tmpdir(), 'reglow-demo-'));
    await cp(folder, copy, { recursive: true });
  });
  afterEach(async () => {
    await api.close();
    await rm(copy, { recursive: true, force: true });
  });

  const loadWith = async (file: string, search: string, replacement: string) => {
    const path = join(copy, file);
    const text = await readFile(path, 'utf8');
    expect(text).toContain(search);
    await writeFile(path, text.replace(search, replacement));
    return loadDemo(api.database, copy, new Date(api.nowMs));
  };

  it.each([
    ['rigs/R-012.yaml', 'do: say', 'do: whisper', /R-012\.yaml, story entry 1.*no verb “whisper”/],
    ['rigs/R-012.yaml', 'by: Corin', 'from: Corin', /R-012\.yaml, story entry 1 \(say[^]*from/],
    ['rigs/R-012.yaml', 'kind: RIG', 'kind: SET', /R-012\.yaml[^]*items\["?R-012"?\]\.kind/],
    [
      'rigs/R-012.yaml',
      '2026-05-30 19:30',
      'soon',
      /R-012\.yaml, story entry 1.*“soon” is no time/,
    ],
    ['rigs/R-012.yaml', '2026-05-30 19:30', '2026-07-30 19:30', /after the day of loading/],
    ['people.yaml', 'people:', 'people: [', /people\.yaml/],
  ])('%s with “%s” as “%s” is named with what to mend', async (file, search, replacement, why) => {
    await expect(loadWith(file, search, replacement)).rejects.toThrow(why);
  });

  it('leaves nothing behind when an event half-way is refused', async () => {
    await expect(loadWith('rigs/R-012.yaml', 'by: Corin Wexmoor', 'by: Nobody')).rejects.toThrow(
      /R-012\.yaml, story entry 1.*no person called “Nobody”/,
    );
    for (const table of ['item', 'party', 'change', 'item_standing']) {
      const rows = await api.database.reader.rows(`SELECT 1 AS "one" FROM ${table}`);
      expect(rows).toEqual([]);
    }
  }, 60_000);
});

describe('reglow demo', () => {
  it('says what was loaded and what to try next; a second time it says where to put another', async () => {
    // The server of `api` has the same file open all the while.
    const api = await testApi('sqlite');
    const lines: string[] = [];
    const around: Surroundings = {
      config: {
        databaseUrl: api.url,
        attachmentsFolder: `${api.url.slice('sqlite:'.length)}-attachments`,
        host: '127.0.0.1',
        port: 4600,
        allowedHosts: [],
        isQuiet: false,
      },
      nowMs: () => api.nowMs,
      print: (line) => lines.push(line),
      say: () => undefined,
      repaint: null,
      untilStopped: () => Promise.resolve(),
      isDebugging: false,
    };
    try {
      await demo(around);
      expect(lines[0]).toMatch(/27 items of 10 models.*\d+ work sessions/);
      expect(lines.join('\n')).toMatch(/invented[^]*Three things to try next[^]*1\.[^]*2\.[^]*3\./);
      const queries = lines.filter((line) => line.trim().startsWith('{'));
      expect(queries).toHaveLength(3);
      for (const query of queries)
        expect(JSON.stringify(await api.ask(query))).toMatch(/level|p80Hours|first made/);
      await expect(demo(around)).rejects.toThrow(/REGLOW_DATA=/);
    } finally {
      await api.close();
    }
  }, 120_000);
});
