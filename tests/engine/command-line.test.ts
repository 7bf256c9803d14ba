// cspell:words Hersteller Inventarnr Küche exprt
import { existsSync } from 'node:fs';
import { mkdtemp, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { createServer, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { runProgram } from '../../src/commands/runProgram.js';
import type { Surroundings } from '../../src/commands/surroundings.js';
import { readConfig } from '../../src/config.js';

let folder: string;
let printed: string[];
let said: string[];

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reglow-test-command-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

/** Runs a command as if it were typed. @returns the exit code. */
async function reglow(args: string[], differences: Partial<Surroundings> = {}): Promise<number> {
  printed = [];
  said = [];
  return runProgram(args, {
    config: readConfig({ REGLOW_DATA: folder, REGLOW_PORT: '0' }),
    nowMs: () => Date.parse('2026-06-01T12:00:00Z'),
    print: (line) => printed.push(line),
    say: (line) => said.push(line),
    repaint: null,
    untilStopped: () => Promise.resolve(),
    isDebugging: false,
    ...differences,
  });
}

const withData = (name: string): Partial<Surroundings> => ({
  config: readConfig({ REGLOW_DATA: join(folder, name) }),
});

async function list(text: string | Buffer): Promise<string> {
  const path = join(folder, 'list.csv');
  await writeFile(path, text);
  return path;
}

const collection = () => join(folder, 'reglow.sqlite');

describe('reglow import', () => {
  it('checks first, then loads, and says what it understood', async () => {
    const path = await list('Tag;Typ;Hersteller;Extra\nR-1;G1;Gale;x\nR-2;G1;Gale;\n');
    const map = ['--map', 'Tag=inventoryNumber'];
    expect(await reglow(['import', path, '--dry-run', ...map])).toBe(0);
    expect(printed).toContain('Read as utf-8, cells divided by semicolon.');
    expect(printed).toContain('  Extra → not known, kept in the note');
    expect(printed).toContain('Would add models (1): Gale G1.');
    expect(printed.at(-1)).toBe('2 rows, and nothing to mend.');
    expect(await reglow(['import', path, ...map])).toBe(0);
    expect(printed.at(-1)).toBe('Loaded 2 rows.');
  });

  it('names line and column of each problem, ends with 1, and shows no stack', async () => {
    const path = await list('No,Date,Price\nR-1,03/04/1971,5\nR-1,1.1.2000,5\n');
    expect(await reglow(['import', path, '--currency', 'EUR'])).toBe(1);
    expect(
      printed.filter((line) => line.startsWith('Line 2, Date: “03/04/1971” may be')),
    ).toHaveLength(1);
    expect(said).toEqual(['Nothing was loaded: 1 problem has to be mended first.']);
    const asMonthFirst = ['--currency', 'EUR', '--date-order', 'month-first'];
    expect(await reglow(['import', path, ...asMonthFirst])).toBe(1);
    expect(printed).toContain('Line 3, No: “R-1” stands in line 2 too.');
  });

  it('reads Windows-1252 and says so', async () => {
    const path = await list(Buffer.from('Inventarnr;Ort\nR-1;K\xfcche\n', 'latin1'));
    expect(await reglow(['import', path])).toBe(0);
    expect(printed).toContain('Read as windows-1252, cells divided by semicolon.');
    expect(printed).toContain('Added places (1): Küche.');
  });

  it('loads 3,000 rows in batches, while reads go on', async () => {
    const rows = Array.from({ length: 3000 }, (_, index) => `R-${index},Gale,G${index % 50}`);
    const path = await list(`No,Maker,Model\n${rows.join('\n')}\n`);
    const bars: string[] = [];
    let turns = 0;
    const timer = setInterval(() => turns++, 1);
    expect(await reglow(['import', path], { repaint: (text) => bars.push(text) })).toBe(0);
    clearInterval(timer);
    expect(turns).toBeGreaterThan(3000 / 200);
    expect(bars.find((bar) => bar.includes('Loading'))).toMatch(
      /^\[#+\.*\] Loading … \d+ %, [\d,]+ rows$/,
    );
    expect(bars.at(-1)).toBe('');
    const database = new Sqlite(collection(), { readonly: true });
    const count = (sql: string) => database.prepare(sql).pluck().get();
    expect(count('SELECT COUNT(*) FROM item')).toBe(3000);
    expect(count(`SELECT COUNT(*) FROM change WHERE record_table = 'item'`)).toBe(3000);
    expect(count('SELECT COUNT(*) FROM item_text')).toBe(3000);
    expect(count('SELECT COUNT(*) FROM item_standing')).toBe(3000);
    database.close();
  });
});

describe('reglow hours, calendar and report', () => {
  const days = ['--from', '2025-06-01', '--to', '2026-06-01'];

  it('write what was done in the demo, for a sheet, a calendar and those who follow the work', async () => {
    expect(await reglow(['demo'])).toBe(0);
    expect(await reglow(['hours', ...days, '--item', 'R-005'])).toBe(0);
    const [header, ...rows] = printed.join('\n').split(/\r?\n/);
    expect(header).toContain('date,start,end,time_zone,person,item');
    expect(rows.length).toBeGreaterThan(10);
    expect(rows.every((row) => row.includes('R-005'))).toBe(true);

    expect(await reglow(['calendar', 'sessions', ...days])).toBe(0);
    expect(printed.join('\n')).toMatch(/^BEGIN:VCALENDAR[^]*BEGIN:VEVENT[^]*END:VCALENDAR$/);

    expect(await reglow(['calendar', 'maintenance'])).toBe(0);
    const due = printed.join('\n').replace(/\r?\n /g, '');
    expect(due).toContain('“Insulation and earth bond” goes stale');
    expect(due).toContain('“Covers off\\, dust out\\, screws of the power connectors tight”');

    const file = join(folder, 'progress.html');
    expect(await reglow(['report', ...days, '--as', 'html', '--file', file])).toBe(0);
    expect(await readFile(file, 'utf8')).toMatch(/^<!doctype html>[^]*<h2>What is next<\/h2>/);
    expect(await reglow(['report', ...days, '--file', file])).toBe(1);
    expect(await reglow(['report', ...days, '--file', file, '--replace'])).toBe(0);
    expect(await readFile(file, 'utf8')).toContain('## Readings before and after');
  }, 120_000);

  it('say in one sentence what to mend', async () => {
    expect(await reglow(['hours', ...days])).toBe(1);
    expect(said).toHaveLength(1);
    await reglow(['import', await list('No\nR-1\n')]);
    expect(await reglow(['hours', '--from', '2026-06-02', '--to', '2026-06-01'])).toBe(1);
    expect(said).toEqual([expect.stringContaining('is before the first')]);
    expect(await reglow(['report', ...days, '--item', 'R-9'])).toBe(1);
    expect(said).toEqual([expect.stringContaining('R-9')]);
  });
});

describe('reglow export, load and backup', () => {
  beforeEach(async () => {
    await reglow(['import', await list('No,Place\nR-1,House > Attic\n')]);
  });

  it('writes an archive that loads into another collection, and only into an empty one', async () => {
    const archive = join(folder, 'all.json');
    expect(await reglow(['export', '--archive', archive])).toBe(0);
    expect(await reglow(['export', '--archive', archive])).toBe(1);
    expect(said[0]).toContain('is there already');
    expect(await reglow(['load', archive], withData('other'))).toBe(0);
    expect(printed[0]).toMatch(/^Loaded \d+ records, 1 of them items\.$/);
    const again = join(folder, 'again.json');
    await reglow(['export', '--archive', again], withData('other'));
    expect((await readFile(again, 'utf8')).replace(/"writtenAt":"[^"]*"/, '')).toBe(
      (await readFile(archive, 'utf8')).replace(/"writtenAt":"[^"]*"/, ''),
    );
    expect(await reglow(['load', archive])).toBe(1);
    expect(said).toHaveLength(1);
  });

  it('writes a folder of CSV files, not over what is there', async () => {
    const out = join(folder, 'csv');
    expect(await reglow(['export', out])).toBe(0);
    expect(await readdir(out)).toContain('rigs.csv');
    expect(await reglow(['export', out])).toBe(1);
    expect(await reglow(['export', out, '--replace'])).toBe(0);
  });

  it('copies the database file whole', async () => {
    const copy = join(folder, 'copy.sqlite');
    expect(await reglow(['backup', copy])).toBe(0);
    const database = new Sqlite(copy, { readonly: true });
    expect(database.prepare('SELECT inventory_number FROM item').pluck().all()).toEqual(['R-1']);
    database.close();
    expect(await reglow(['backup', copy])).toBe(1);
    const onServer = {
      config: readConfig({ REGLOW_DATABASE: 'postgres://nobody@127.0.0.1/none' }),
    };
    expect(await reglow(['backup', copy], onServer)).toBe(1);
    expect(said[0]).toContain('pg_dump');
  });

  it('computes anew', async () => {
    const database = new Sqlite(collection());
    database.exec('DELETE FROM item_standing; DELETE FROM item_text');
    database.close();
    expect(await reglow(['recompute'])).toBe(0);
    expect(printed).toEqual(['Computed anew how 1 items stand.']);
    const after = new Sqlite(collection(), { readonly: true });
    expect(after.prepare('SELECT COUNT(*) FROM item_standing').pluck().get()).toBe(1);
    expect(after.prepare('SELECT body FROM item_text').pluck().get()).toBe('r 1');
    after.close();
  });
});

describe('reglow schema', () => {
  it('writes the schema down, and fails when what is written is another', async () => {
    const file = join(folder, 'schema', 'schema.graphql');
    expect(await reglow(['schema', '--check', '--file', file])).toBe(1);
    expect(said[0]).toContain('npm run schema:write');
    expect(await reglow(['schema', '--write', '--file', file])).toBe(0);
    expect(await reglow(['schema', '--check', '--file', file])).toBe(0);
    await writeFile(file, (await readFile(file, 'utf8')).replace('importList', 'bringList'));
    expect(await reglow(['schema', '--check', '--file', file])).toBe(1);
  });
});

describe('reglow serve', () => {
  it('answers until it is told to stop, and then closes', async () => {
    let answer: unknown;
    const code = await reglow(['serve'], {
      untilStopped: async () => {
        const url = printed[0]?.replace(/^.*the API at (.*)\)$/, '$1') ?? '';
        const response = await fetch(url, {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: JSON.stringify({ query: '{ rigs { totalCount } }' }),
        });
        answer = await response.json();
      },
    });
    expect(code).toBe(0);
    expect(answer).toEqual({ data: { rigs: { totalCount: 0 } } });
    expect(printed.join('\n')).toContain('npm run demo');
  });

  it('says what to do when the port is taken', async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
    const { port } = other.address() as AddressInfo;
    const config = readConfig({ REGLOW_DATA: folder, REGLOW_PORT: String(port) });
    expect(await reglow(['serve'], { config })).toBe(1);
    expect(said).toHaveLength(1);
    expect(said[0]).toContain(`REGLOW_PORT=${port + 1}`);
    other.close();
  });
});

describe('a command that cannot be carried out', () => {
  it.each([
    [['exprt'], "unknown command 'exprt'"],
    [['import'], "missing required argument 'file'"],
    [['import', 'x.csv', '--kind', 'radios'], 'rigs, accessories'],
    [['import', '/nowhere/x.csv'], 'There is no such file or folder: /nowhere/x.csv'],
    [['import', 'x.csv', '--map', 'Tag'], 'is not a column and a field'],
    [['import', 'x.csv', '--role', 'toaster'], 'is not a role'],
    [['export'], 'Name a folder'],
    [['export', 'x'], 'There is no collection at'],
    [['load', '/nowhere/x.json'], 'There is no such file'],
    [['backup', 'x'], 'There is no collection at'],
    [['recompute'], 'There is no collection at'],
  ])('%j ends with 1 and a sentence', async (args, sentence) => {
    expect(await reglow(args)).toBe(1);
    expect(said.join('\n')).toContain(sentence);
    expect(said.join('\n')).not.toMatch(/\n\s+at /);
  });

  it('says which file is no collection, and shows a stack only when asked to', async () => {
    await writeFile(collection(), 'not a database, and long enough to be looked at closely');
    expect(await reglow(['recompute'])).toBe(1);
    expect(said[0]).toContain('is not a Reglow collection');
    expect(await reglow(['recompute'], { isDebugging: true })).toBe(1);
    expect(said[0]).toMatch(/\n\s+at /);
    expect(existsSync(join(folder, 'x'))).toBe(false);
  });
});
