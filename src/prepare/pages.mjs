import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildFolder } from './buildFolder.mjs';
import { hashOfSources } from './hashOfSources.mjs';

/** @typedef {import('./projectPaths.mjs').ProjectPaths} ProjectPaths */

const SOURCES = ['src/web', 'schema/schema.graphql', 'schema/operations', 'package-lock.json'];
// The types of the documents: written by the build itself.
const GENERATED = ['src/web/gql'];

/**
 * Whether dist-web/ was built from exactly the sources that are here, and the documents' types are.
 * @param {ProjectPaths} paths
 */
export function pagesAreCurrent(paths) {
  if (!existsSync(paths.pagesStamp) || !existsSync(paths.documentTypes)) return false;
  return readFileSync(paths.pagesStamp, 'utf8') === stampOf(paths);
}

/**
 * Writes the types of the dashboard's documents and bundles its pages into dist-web/.
 * @param {ProjectPaths} paths
 * @param {import('./takeTurn.mjs').Turn} turn
 */
export async function buildPages(paths, turn) {
  const codegen = join(paths.packages, '@graphql-codegen', 'cli', 'cjs', 'bin.js');
  const vite = join(paths.packages, 'vite', 'bin', 'vite.js');
  await buildFolder(paths, turn, {
    folder: paths.pages,
    stamp: stampOf(paths),
    tools: (building) => [
      [codegen, '--config', 'src/web/codegen.yml', '--silent', '--errors-only'],
      [vite, 'build', 'src/web', '--outDir', building, '--logLevel', 'warn'],
    ],
    mend: 'Building the pages failed; the lines above name each place. If you changed nothing, fetch the project again (`git status` shows what differs); else mend them and run the same command again.',
  });
}

/** @param {ProjectPaths} paths */
const stampOf = (paths) => hashOfSources(paths.root, SOURCES, GENERATED);
