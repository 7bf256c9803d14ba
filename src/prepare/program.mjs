import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildFolder } from './buildFolder.mjs';
import { hashOfSources } from './hashOfSources.mjs';

/** @typedef {import('./projectPaths.mjs').ProjectPaths} ProjectPaths */

const SOURCES = ['src', 'migrations', 'tsconfig.json', 'tsconfig.build.json', 'package-lock.json'];
// The pages are built on their own, by pages.mjs.
const NOT_OF_THE_PROGRAM = ['src/web'];

/**
 * Whether dist/ was compiled from exactly the sources that are here.
 * @param {ProjectPaths} paths
 */
export function programIsCurrent(paths) {
  if (!existsSync(paths.programStamp)) return false;
  return readFileSync(paths.programStamp, 'utf8') === stampOf(paths);
}

/**
 * Compiles the program into dist/.
 * @param {ProjectPaths} paths
 * @param {import('./takeTurn.mjs').Turn} turn
 */
export async function buildProgram(paths, turn) {
  const compiler = join(paths.packages, 'typescript', 'bin', 'tsc');
  await buildFolder(paths, turn, {
    folder: paths.program,
    stamp: stampOf(paths),
    tools: (building) => [[compiler, '-p', 'tsconfig.build.json', '--outDir', building]],
    mend: 'Compiling failed; the lines above name each place. If you changed nothing, fetch the project again (`git status` shows what differs); else mend them and run the same command again.',
  });
}

/** @param {ProjectPaths} paths */
const stampOf = (paths) => hashOfSources(paths.root, SOURCES, NOT_OF_THE_PROGRAM);
