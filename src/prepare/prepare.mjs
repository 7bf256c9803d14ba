import { adoptPackagesInstalledByHand, installPackages, packagesAreCurrent } from './packages.mjs';
import { buildPages, pagesAreCurrent } from './pages.mjs';
import { buildProgram, programIsCurrent } from './program.mjs';
import { say } from './say.mjs';
import { takeTurn } from './takeTurn.mjs';

/** @typedef {import('./projectPaths.mjs').ProjectPaths} ProjectPaths */

/**
 * Brings packages, program and pages up to date; does nothing, quickly, when they are.
 * @param {ProjectPaths} paths
 */
export async function prepare(paths) {
  await prepareProgram(paths);
  if (pagesAreCurrent(paths)) return;
  await inTurn(paths, async (turn) => {
    if (pagesAreCurrent(paths)) return;
    say('Building its pages …');
    await buildPages(paths, turn);
  });
}

/**
 * Brings packages and program up to date, not the pages: these are built from the schema that the
 * program writes, and cannot be while they ask for what it has yet to write.
 * @param {ProjectPaths} paths
 */
export async function prepareProgram(paths) {
  await preparePackages(paths);
  if (programIsCurrent(paths)) return;
  await inTurn(paths, async (turn) => {
    if (programIsCurrent(paths)) return;
    say('Compiling Reglow …');
    await buildProgram(paths, turn);
  });
}

/**
 * Brings only the packages up to date.
 * @param {ProjectPaths} paths
 */
export async function preparePackages(paths) {
  if (packagesAreCurrent(paths)) return;
  await inTurn(paths, async (turn) => {
    if (packagesAreCurrent(paths) || adoptPackagesInstalledByHand(paths)) return;
    say('Installing the packages named in package-lock.json; the first time takes a few minutes …');
    await installPackages(paths, turn);
  });
}

/**
 * @param {ProjectPaths} paths
 * @param {(turn: import('./takeTurn.mjs').Turn) => Promise<void>} work
 */
async function inTurn(paths, work) {
  const turn = await takeTurn(paths.turn, (holder) =>
    say(`Another start (process ${holder?.pid ?? 'unknown'}) is preparing this folder; waiting …`),
  );
  try {
    await work(turn);
  } finally {
    turn.end();
  }
}
