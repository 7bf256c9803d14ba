import { createHash } from 'node:crypto';
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, dirname, join } from 'node:path';
import { PreparationFailed } from './PreparationFailed.mjs';
import { runTool } from './runTool.mjs';

/** @typedef {import('./projectPaths.mjs').ProjectPaths} ProjectPaths */
/** @typedef {{ version?: string, integrity?: string, optional?: boolean, devOptional?: boolean, peer?: boolean, link?: boolean }} LockedPackage */

// Compiled for one machine and one Node; there only when the install scripts really ran.
const COMPILED = join('better-sqlite3', 'build', 'Release', 'better_sqlite3.node');

/**
 * Whether node_modules is what the lock file asks for, on this machine and this Node.
 * @param {ProjectPaths} paths
 */
export function packagesAreCurrent(paths) {
  return existsSync(paths.packagesStamp) && readText(paths.packagesStamp) === stampOf(paths);
}

/**
 * Accepts an install made by hand (`npm install`, `npm ci`) when nothing of the lock file misses.
 * @param {ProjectPaths} paths
 */
export function adoptPackagesInstalledByHand(paths) {
  if (existsSync(paths.packagesStamp) && !wasStampedHere(paths)) return false;
  const asked = lockedPackages(paths.lockFile);
  const present = lockedPackages(paths.installedLock);
  if (asked === null || present === null) return false;
  for (const [place, wanted] of Object.entries(asked)) {
    if (place === '') continue;
    const found = present[place];
    if (found === undefined && (wanted.optional || wanted.devOptional)) continue;
    if (found?.version !== wanted.version || found?.integrity !== wanted.integrity) return false;
    if (!existsSync(join(paths.root, place))) return false;
  }
  if (!loads(join(paths.packages, COMPILED))) return false;
  writeStamp(paths);
  return true;
}

/** @param {string} compiledPart */
function loads(compiledPart) {
  try {
    createRequire(import.meta.url)(compiledPart);
    return true;
  } catch {
    return false;
  }
}

/**
 * Installs from the lock file. The marks of completeness go first and the stamp comes last, so an
 * install that is cut off is never taken for a whole one.
 * @param {ProjectPaths} paths
 * @param {import('./takeTurn.mjs').Turn} turn
 */
export async function installPackages(paths, turn) {
  rmSync(paths.packagesStamp, { force: true });
  rmSync(paths.installedLock, { force: true });
  const exitCode = await runTool([npmProgram(), 'ci', '--include=dev', '--loglevel=warn'], {
    cwd: paths.root,
    onStart: turn.noteTool,
    beforeDyingOf: turn.end,
  });
  if (exitCode !== 0) {
    throw new PreparationFailed(
      `Installing the packages failed (npm ended with ${exitCode}; its reason is above). ` +
        'Check the network connection, and that a C++ compiler and Python 3 are installed if the reason names node-gyp; then run the same command again.',
    );
  }
  writeStamp(paths);
}

/** @param {ProjectPaths} paths */
function stampOf(paths) {
  return [
    `asked ${hashOf(paths.lockFile)}`,
    `present ${hashOf(paths.installedLock)}`,
    machineAndNode(),
    '',
  ].join('\n');
}

// Packages with compiled parts fit one platform and one binary interface of Node.
function machineAndNode() {
  return `for ${process.platform} ${process.arch} node-abi-${process.versions.modules}`;
}

/** @param {ProjectPaths} paths */
function wasStampedHere(paths) {
  return readText(paths.packagesStamp).includes(machineAndNode());
}

/** @param {ProjectPaths} paths */
function writeStamp(paths) {
  try {
    writeFileSync(paths.packagesStamp, stampOf(paths));
  } catch (error) {
    // A read-only install works as well; it is only looked through again next time.
    const { code } = /** @type {NodeJS.ErrnoException} */ (error);
    if (code !== 'EROFS' && code !== 'EACCES') throw error;
  }
}

/**
 * @param {string} file
 * @returns {Record<string, LockedPackage> | null}
 */
function lockedPackages(file) {
  return existsSync(file) ? JSON.parse(readText(file)).packages : null;
}

// The npm that started us, else the one installed beside this Node. Called through Node itself,
// since npm.cmd on Windows cannot be spawned without a shell.
function npmProgram() {
  const starter = process.env['npm_execpath'];
  if (starter !== undefined && /npm-cli\.(c|m)?js$/.test(starter)) return starter;
  const besideNode = dirname(process.execPath);
  const folders = (process.env['PATH'] ?? '').split(delimiter);
  const candidates = [besideNode, ...folders].flatMap((folder) => [
    join(folder, 'node_modules', 'npm', 'bin', 'npm-cli.js'),
    join(folder, '..', 'lib', 'node_modules', 'npm', 'bin', 'npm-cli.js'),
  ]);
  const found = candidates.find((candidate) => existsSync(candidate));
  if (found !== undefined) return found;
  throw new PreparationFailed(
    'npm was not found beside this Node. Install Node with its npm from https://nodejs.org, or run `npm ci` yourself and then the same command again.',
  );
}

/** @param {string} file */
function hashOf(file) {
  if (!existsSync(file)) return 'nothing';
  return createHash('sha256').update(readFileSync(file)).digest('hex');
}

/** @param {string} file */
function readText(file) {
  return readFileSync(file, 'utf8');
}
