import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { PreparationFailed } from '../../src/prepare/PreparationFailed.mjs';
import type { ProjectPaths } from '../../src/prepare/projectPaths.mjs';
import { projectPaths } from '../../src/prepare/projectPaths.mjs';
import { buildProgram, programIsCurrent } from '../../src/prepare/program.mjs';

const root = resolve(import.meta.dirname, '../..');
const turn = { noteTool: () => undefined, end: () => undefined };
// As the real settings, less the libraries' types, which take most of the time.
const quickToCompile = {
  compilerOptions: { module: 'NodeNext', rootDir: '.', lib: ['ES5'], types: [], strict: true },
  include: ['src'],
};
let paths: ProjectPaths;

beforeEach(() => {
  mkdirSync(join(root, '.tmp'), { recursive: true });
  paths = projectPaths(mkdtempSync(join(root, '.tmp', 'clone-')));
  mkdirSync(join(paths.root, 'src'));
  writeFileSync(join(paths.root, 'package.json'), '{ "type": "module" }');
  writeFileSync(join(paths.root, 'tsconfig.build.json'), JSON.stringify(quickToCompile));
  symlinkSync(join(root, 'node_modules'), paths.packages, 'junction');
  write('export const answer: number = 1;');
});

afterEach(() => rmSync(paths.root, { recursive: true, force: true }));

const write = (text: string): void => writeFileSync(join(paths.root, 'src', 'main.ts'), text);
const compiled = (): string => readFileSync(paths.main, 'utf8');

describe('the compiled program', { timeout: 60_000 }, () => {
  it('is compiled anew when, and only when, a source changed', async () => {
    expect(programIsCurrent(paths)).toBe(false);
    await buildProgram(paths, turn);
    expect(programIsCurrent(paths)).toBe(true);

    write('export const answer: number = 2;');
    expect(programIsCurrent(paths)).toBe(false);
    await buildProgram(paths, turn);
    expect(programIsCurrent(paths)).toBe(true);
    expect(compiled()).toContain('answer = 2');
  });

  it('stays the old one, whole, when compiling fails, and is not taken for current', async () => {
    await buildProgram(paths, turn);
    write('export const answer: number = "two";');
    await expect(buildProgram(paths, turn)).rejects.toThrow(PreparationFailed);
    expect(compiled()).toContain('answer = 1');
    expect(programIsCurrent(paths)).toBe(false);
  });

  it('is not hindered by what a killed compilation left', async () => {
    const half = join(paths.root, 'dist-building-1');
    mkdirSync(join(half, 'src'), { recursive: true });
    writeFileSync(join(half, 'src', 'main.js'), 'half of it');
    expect(programIsCurrent(paths)).toBe(false);
    await buildProgram(paths, turn);
    expect(existsSync(half)).toBe(false);
    expect(readdirSync(paths.root).filter((name) => name.startsWith('dist'))).toEqual(['dist']);
  });
});
