import { existsSync, mkdtempSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { spawn, spawnSync } from 'node:child_process';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { takeTurn } from '../../src/prepare/takeTurn.mjs';

let folder: string;
let file: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'reglow-test-turn-'));
  file = join(folder, 'prepare.lock');
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

const aDeadProcess = (): number => spawnSync(process.execPath, ['-e', '']).pid;

const leftBy = (holder: { pid: number; host?: string; toolPid?: number }): void =>
  writeFileSync(file, JSON.stringify({ host: hostname(), ...holder }));

describe('preparing a clone', () => {
  it('happens one at a time, however many are started at once', async () => {
    let atWork = 0;
    let mostAtWork = 0;
    await Promise.all(
      Array.from({ length: 4 }, async () => {
        const turn = await takeTurn(file, () => undefined);
        mostAtWork = Math.max(mostAtWork, ++atWork);
        await pause(20);
        atWork--;
        turn.end();
      }),
    );
    expect(mostAtWork).toBe(1);
    expect(existsSync(file)).toBe(false);
  });

  it('is not held up by one that was killed', async () => {
    leftBy({ pid: aDeadProcess() });
    let hasWaited = false;
    const turn = await takeTurn(file, () => (hasWaited = true));
    expect(hasWaited).toBe(false);
    expect(JSON.parse(readFileSync(file, 'utf8'))).toMatchObject({ pid: process.pid });
    turn.end();
  });

  it('waits while the npm that a killed one had started still runs', async () => {
    const orphan = spawn(process.execPath, ['-e', 'setTimeout(() => {}, 60_000)']);
    leftBy({ pid: aDeadProcess(), toolPid: orphan.pid! });
    let isTaken = false;
    const taking = takeTurn(file, () => undefined).then((turn) => {
      isTaken = true;
      return turn;
    });
    await pause(500);
    expect(isTaken).toBe(false);
    orphan.kill('SIGKILL');
    (await taking).end();
  });

  it('is not held up by a file that another machine left behind a while ago', async () => {
    leftBy({ pid: 1, host: 'another-machine' });
    const twoMinutesAgo = Date.now() / 1000 - 120;
    utimesSync(file, twoMinutesAgo, twoMinutesAgo);
    (await takeTurn(file, () => undefined)).end();
    expect(existsSync(file)).toBe(false);
  });
});
