import { chmod, mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runProgram } from '../../src/commands/runProgram.js';
import { readConfig } from '../../src/config.js';
import { changeRow } from '../../src/db/changeRow.js';
import { ItemEntity } from '../../src/features/items/item.entity.js';
import { openCollection } from '../../src/features/openCollection.js';

let folder: string;
let printed: string[];
let said: string[];

async function reglow(...args: string[]): Promise<number> {
  printed = [];
  said = [];
  return runProgram(args, {
    config: readConfig({ REGLOW_DATA: folder, REGLOW_PORT: '0' }),
    nowMs: () => Date.parse('2026-06-01T12:00:00Z'),
    print: (line) => printed.push(line),
    say: (line) => said.push(line),
    repaint: null,
    untilStopped: () => new Promise<void>(() => undefined),
    isDebugging: false,
  });
}
/** As `changeRig` does, which the command line has not. */
async function rename(name: string): Promise<void> {
  const database = await openCollection(readConfig({ REGLOW_DATA: folder }).databaseUrl);
  const act = { action: 'changeRig', actorId: null, now: '2026-06-01T12:00:00.000Z' };
  await database.write(act, async (work) => {
    const [item] = await work.manager.find(ItemEntity);
    await changeRow(work, ItemEntity, item?.id ?? '', null, { name });
  });
  await database.close();
}
const at = (name: string): string => join(folder, name);

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reglow-test-log-'));
  await writeFile(at('list.csv'), 'No,Name\nR-1,Gale of Ines Marrow\n');
  await reglow('import', at('list.csv'));
}, 60_000);
afterAll(() => rm(folder, { recursive: true, force: true }));

describe('a head that the owner signs', () => {
  it('is made with a key that the owner alone may read', async () => {
    expect(await reglow('sign-head', '--out', at('head.json'))).toBe(0);
    expect(printed.join('\n')).toContain('Signed the log up to entry');
    expect((await stat(at('reglow-owner-key.pem'))).mode & 0o777).toBe(0o600);
    const head = JSON.parse(await readFile(at('head.json'), 'utf8')) as Record<string, unknown>;
    expect(Object.keys(head).sort()).toEqual(
      ['entryHash', 'publicKey', 'sequence', 'signature', 'signedAt'].sort(),
    );
    expect(await reglow('sign-head', '--out', at('head.json'))).toBe(1);
    expect(said.join('\n')).toContain('head.json');
  });

  it('is not made with a key that others may read', async () => {
    await chmod(at('reglow-owner-key.pem'), 0o644);
    expect(await reglow('sign-head')).toBe(1);
    expect(said.join('\n')).toContain('chmod 600');
    await chmod(at('reglow-owner-key.pem'), 0o600);
    await writeFile(at('no-key.pem'), 'nothing', { mode: 0o600 });
    expect(await reglow('sign-head', '--key', at('no-key.pem'))).toBe(1);
    expect(said.join('\n')).toContain('holds no Ed25519 key');
  });

  it('shows later that the log was only added to, or that it was not', async () => {
    expect(await reglow('verify', '--head', at('head.json'))).toBe(0);
    expect(printed.join('\n')).toContain('signed heads against it');
    const head = JSON.parse(await readFile(at('head.json'), 'utf8')) as Record<string, unknown>;
    await writeFile(at('other.json'), JSON.stringify({ ...head, entryHash: 'f'.repeat(64) }));
    expect(await reglow('verify', '--head', at('other.json'))).toBe(1);
    expect(printed.join('\n')).toContain('does not fit');
    await writeFile(at('torn.json'), '{');
    expect(await reglow('verify', '--head', at('torn.json'))).toBe(1);
    expect(said.join('\n')).toContain('torn.json');
  });
});

describe('reglow redact', () => {
  it('refuses while the record says it still, and leaves a log that can be verified', async () => {
    const redact = ['redact', 'R-1', '--field', 'name', '--reason', 'Asked to be forgotten'];
    expect(await reglow(...redact)).toBe(1);
    expect(said.join('\n')).toContain('Change it to something else first');
    await rename('Gale');
    expect(await reglow(...redact)).toBe(0);
    expect(printed[0]).toMatch(/Took name out of \d+ entries of the log/);
    expect(await reglow('export', '--archive', at('all.json'))).toBe(0);
    expect(await readFile(at('all.json'), 'utf8')).not.toContain('Ines Marrow');
    expect(await reglow('verify', '--head', at('head.json'))).toBe(0);
  });
});
