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
  if (packagesAreCurrent(paths) && programIsCurrent(paths) && pagesAreCurrent(paths)) return;
  await preparePackages(paths);
  await inTurn(paths, async (turn) => {
    if (!programIsCurrent(paths)) {
      say('Compiling Reglow …');
      await buildProgram(paths, turn);
    }
    if (!pagesAreCurrent(paths)) {
      say('Building its pages …');
      await buildPages(paths, turn);
    }
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
