import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runProgram } from '../../src/commands/runProgram.js';
import { readConfig } from '../../src/config.js';
import { openCollection } from '../../src/features/openCollection.js';
import { admitToken } from '../../src/features/readTokens/admitToken.js';

const nowMs = Date.parse('2026-06-01T12:00:00Z');
let folder: string;
let printed: string[];
let said: string[];

async function reglow(...args: string[]): Promise<number> {
  printed = [];
  said = [];
  return runProgram(args, {
    config: readConfig({ REGLOW_DATA: folder, REGLOW_PORT: '0' }),
    nowMs: () => nowMs,
    print: (line) => printed.push(line),
    say: (line) => said.push(line),
    repaint: null,
    untilStopped: () => new Promise<void>(() => undefined),
    isDebugging: false,
  });
}

async function admits(token: string): Promise<unknown> {
  const database = await openCollection(readConfig({ REGLOW_DATA: folder }).databaseUrl);
  const outcome = await admitToken(database, token, 'EVENTS', nowMs);
  await database.close();
  return outcome;
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reglow-test-token-'));
  await writeFile(join(folder, 'list.csv'), 'No,Name\nR-1,Gale\n');
  await reglow('import', join(folder, 'list.csv'));
}, 60_000);
afterAll(() => rm(folder, { recursive: true, force: true }));

describe('tokens by the command line', () => {
  it('are made, listed without themselves, and taken back', async () => {
    const made = await reglow(
      ...['token', 'make', '--name', 'hall', '--opens', 'events', 'figures', '--shows', 'places'],
    );
    expect(made).toBe(0);
    // Standard output holds the token and nothing else, so that it can be read into a variable.
    const [token = ''] = printed;
    expect(printed).toHaveLength(1);
    expect(said.join()).toContain('cannot be shown again');
    expect(await admits(token)).toEqual({ shows: new Set(['PLACES']) });
    expect(await reglow('token', 'list')).toBe(0);
    expect(printed.join('\n')).toMatch(
      /^ReadToken_\S+ {2}hall {2}opens events\+figures {2}shows places {2}made 2026-06-01 {2}last used 2026-06-01$/,
    );
    expect(printed.join('\n')).not.toContain(token.slice(-43));
    expect(await reglow('token', 'take-back', 'hall')).toBe(0);
    expect(await admits(token)).toMatchObject({ status: 401 });
    expect(await reglow('token', 'take-back', 'hall')).toBe(1);
    await reglow('token', 'list');
    expect(printed.join('\n')).toContain('taken back 2026-06-01');
  });

  it('are refused with what to mend', async () => {
    expect(await reglow('token', 'make', '--name', 'x', '--opens', 'everything')).toBe(1);
    expect(said.join()).toContain('figures, events, calendar, documents');
    const until = (day: string) =>
      reglow('token', 'make', '--name', 'x', '--opens', 'events', '--last-day', day);
    expect(await until('2026-02-31')).toBe(1);
    expect(said.join()).toContain('YYYY-MM-DD');
    expect(await until('2026-05-31')).toBe(1);
    expect(said.join()).toContain('This day is over');
  });

  it('say which is meant where two are called the same', async () => {
    await reglow('token', 'make', '--name', 'twin', '--opens', 'events');
    await reglow('token', 'make', '--name', 'twin', '--opens', 'events');
    expect(await reglow('token', 'take-back', 'twin')).toBe(1);
    expect(said.join()).toContain('by its id');
    await reglow('token', 'list');
    const [id = ''] = /^ReadToken_[0-9a-f-]+/.exec(printed[0] ?? '') ?? [];
    expect(await reglow('token', 'take-back', id)).toBe(0);
    expect(await reglow('token', 'take-back', 'twin')).toBe(0);
  });
});
