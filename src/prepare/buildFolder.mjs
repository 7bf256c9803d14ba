import { existsSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { PreparationFailed } from './PreparationFailed.mjs';
import { runTool } from './runTool.mjs';

/** @typedef {import('./projectPaths.mjs').ProjectPaths} ProjectPaths */

const HALF_BUILT = 'dist-building-';
const OUTGOING = 'dist-outgoing-';

/**
 * Builds into a folder of its own, stamps it and only then puts it in the other's place: what is
 * there is always whole, the old one or the new one.
 * @param {ProjectPaths} paths
 * @param {import('./takeTurn.mjs').Turn} turn
 * @param {{ folder: string, stamp: string, tools: (building: string) => string[][], mend: string }} build
 */
export async function buildFolder(paths, turn, { folder, stamp, tools, mend }) {
  removeLeftovers(paths.root);
  const building = join(paths.root, `${HALF_BUILT}${process.pid}`);
  for (const args of tools(building)) {
    const exitCode = await runTool(args, {
      cwd: paths.root,
      onStart: turn.noteTool,
      beforeDyingOf: () => {
        removeLeftovers(paths.root);
        turn.end();
      },
    });
    if (exitCode !== 0) {
      removeLeftovers(paths.root);
      throw new PreparationFailed(mend);
    }
  }
  writeFileSync(join(building, '.reglow-stamp'), stamp);
  if (existsSync(folder)) {
    renameSync(folder, join(paths.root, `${OUTGOING}${process.pid}-${basename(folder)}`));
  }
  renameSync(building, folder);
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
