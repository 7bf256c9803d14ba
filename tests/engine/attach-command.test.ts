import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { runProgram } from '../../src/commands/runProgram.js';
import type { Surroundings } from '../../src/commands/surroundings.js';
import { readConfig } from '../../src/config.js';
import { AttachmentStore } from '../../src/features/attachments/attachmentStore.js';
import { fileDigest } from '../../src/features/attachments/fileDigest.js';
import { cameraPicture } from '../support/picture.js';

let folder: string;
let printed: string[];
let said: string[];

const never = () => new Promise<void>(() => undefined);

async function reglow(args: string[], differences: Partial<Surroundings> = {}): Promise<number> {
  printed = [];
  said = [];
  return runProgram(args, {
    config: readConfig({ REGLOW_DATA: folder, REGLOW_PORT: '0' }),
    nowMs: () => Date.parse('2026-06-01T12:00:00Z'),
    print: (line) => printed.push(line),
    say: (line) => said.push(line),
    repaint: null,
    untilStopped: never,
    isDebugging: false,
    ...differences,
  });
}

const pictures = () => join(folder, 'pictures');

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reglow-test-attach-'));
  await mkdir(join(pictures(), 'inner'), { recursive: true });
  for (const shade of [1, 2, 3, 4]) {
    const name = join(pictures(), shade > 2 ? 'inner' : '', `${shade}.jpg`);
    await writeFile(name, await cameraPicture({ shade: shade * 40 }));
  }
  const list = join(folder, 'list.csv');
  await writeFile(list, 'No,Name\nR-1,Gale\n');
  await reglow(['import', list]);
});
afterEach(() => rm(folder, { recursive: true, force: true }));

describe('reglow attach', () => {
  it('takes folders of pictures, and a second time finds them there', async () => {
    expect(await reglow(['attach', pictures(), '--to', 'R-1', '--role', 'detail'])).toBe(0);
    expect(printed).toEqual(['Attached 4 of 4 files.']);
    expect(await reglow(['attach', pictures(), '--to', 'R-1'])).toBe(0);
    expect(printed).toEqual(['Attached 0 of 4 files; 4 were attached already.']);
  });

  it('stops when asked to, keeps what is done, and goes on from there', async () => {
    let stop: () => void = () => undefined;
    const asked = new Promise<void>((resolve) => (stop = resolve));
    const painted: string[] = [];
    const repaint = (text: string) => {
      painted.push(text);
      if (text.includes(' 1 files')) stop();
    };
    const to = ['attach', pictures(), '--to', 'R-1'];
    expect(await reglow(to, { untilStopped: () => asked, repaint })).toBe(1);
    expect(painted[0]).toContain('[########......................] Attaching … 25 %, 1 files');
    expect(printed).toEqual(['Attached 2 of 4 files.']);
    expect(said.at(-1)).toContain('the same command goes on from here');
    expect(await reglow(to)).toBe(0);
    expect(printed).toEqual(['Attached 2 of 4 files; 2 were attached already.']);
  });

  it('names what it refuses and attaches the rest; a wrong number is said', async () => {
    await writeFile(join(pictures(), 'broken.jpg'), (await cameraPicture()).subarray(0, 50));
    expect(await reglow(['attach', pictures(), '--to', 'R-1'])).toBe(1);
    expect(printed).toEqual(['Attached 4 of 5 files; 1 refused.']);
    expect(said[0]).toMatch(/broken\.jpg: This picture is damaged/);
    expect(await reglow(['attach', pictures(), '--to', 'R-9'])).toBe(1);
    expect(said[0]).toContain('no item with the inventory number R-9');
  });
});

describe('reglow verify and reglow backup, of attachments', () => {
  it('finds a flipped byte and a missing picture; the backup puts both back', async () => {
    await reglow(['attach', pictures(), '--to', 'R-1']);
    expect(await reglow(['verify'])).toBe(0);
    expect(printed.join('\n')).toContain('Read 4 kept files.');
    const copy = join(folder, 'copy.sqlite');
    expect(await reglow(['backup', copy])).toBe(0);
    expect(printed.at(-1)).toContain('Copied 4 attachments into');

    const store = new AttachmentStore(join(folder, 'reglow-attachments'));
    const altered = store.pathOf(await fileDigest(join(pictures(), '1.jpg')));
    const bytes = await readFile(altered);
    bytes.writeUInt8(bytes.readUInt8(40) ^ 1, 40);
    await writeFile(altered, bytes);
    await rm(store.pathOf(await fileDigest(join(pictures(), '2.jpg'))));
    expect(await reglow(['verify'])).toBe(1);
    expect(printed.filter((line) => line.startsWith('1.jpg is not what was kept'))).toHaveLength(1);
    expect(printed.filter((line) => line.startsWith('2.jpg is missing'))).toHaveLength(1);

    const config = { ...readConfig({ REGLOW_DATABASE: `sqlite:${copy}` }) };
    expect(await reglow(['verify'], { config })).toBe(0);
    expect(await reglow(['attach', pictures(), '--to', 'R-1'])).toBe(0);
    expect(printed).toEqual(['Attached 1 of 4 files; 3 were attached already.']);
  });
});
