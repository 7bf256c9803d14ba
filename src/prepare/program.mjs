import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { PreparationFailed } from './PreparationFailed.mjs';
import { runTool } from './runTool.mjs';

/** @typedef {import('./projectPaths.mjs').ProjectPaths} ProjectPaths */

const SOURCES = ['src', 'migrations', 'tsconfig.json', 'tsconfig.build.json', 'package-lock.json'];
const HALF_BUILT = 'dist-building-';
const OUTGOING = 'dist-outgoing-';

/**
 * Whether dist/ was compiled from exactly the sources that are here.
 * @param {ProjectPaths} paths
 */
export function programIsCurrent(paths) {
  if (!existsSync(paths.programStamp)) return false;
  return readFileSync(paths.programStamp, 'utf8') === hashOfSources(paths.root);
}

/**
 * Compiles into a folder of its own, stamps it and only then puts it in dist's place: dist/ is
 * always a whole program, the old one or the new one.
 * @param {ProjectPaths} paths
 * @param {import('./takeTurn.mjs').Turn} turn
 */
export async function buildProgram(paths, turn) {
  removeLeftovers(paths.root);
  const hash = hashOfSources(paths.root);
  const building = join(paths.root, `${HALF_BUILT}${process.pid}`);
  const compiler = join(paths.packages, 'typescript', 'bin', 'tsc');
  const exitCode = await runTool([compiler, '-p', 'tsconfig.build.json', '--outDir', building], {
    cwd: paths.root,
    onStart: turn.noteTool,
    beforeDyingOf: () => {
      removeLeftovers(paths.root);
      turn.end();
    },
  });
  if (exitCode !== 0) {
    removeLeftovers(paths.root);
    throw new PreparationFailed(
      'Compiling failed; the lines above name each place. If you changed nothing, fetch the project again (`git status` shows what differs); else mend them and run the same command again.',
    );
  }
  writeFileSync(join(building, '.reglow-stamp'), hash);
  if (existsSync(paths.program)) {
    renameSync(paths.program, join(paths.root, `${OUTGOING}${process.pid}`));
  }
  renameSync(building, paths.program);
  removeLeftovers(paths.root);
}

/** @param {string} root */
function removeLeftovers(root) {
  for (const name of readdirSync(root)) {
    if (name.startsWith(HALF_BUILT) || name.startsWith(OUTGOING)) {
      rmSync(join(root, name), { recursive: true, force: true });
    }
  }
}

/** @param {string} root */
function hashOfSources(root) {
  const hash = createHash('sha256');
  for (const source of SOURCES) {
    for (const file of filesUnder(join(root, source))) {
      hash
        .update(`${relative(root, file)}\0`)
        .update(readFileSync(file))
        .update('\0');
    }
  }
  return hash.digest('hex');
}

/**
 * @param {string} place a file or a folder; nothing when it does not exist
 * @returns {string[]} in an order that does not depend on the file system
 */
function filesUnder(place) {
  if (!existsSync(place)) return [];
  try {
    return readdirSync(place, { withFileTypes: true, recursive: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .sort();
  } catch (error) {
    if (/** @type {NodeJS.ErrnoException} */ (error).code === 'ENOTDIR') return [place];
    throw error;
  }
}
