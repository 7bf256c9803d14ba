import { join } from 'node:path';
import { thisProject } from '../../src/prepare/projectPaths.mjs';

/**
 * A check that `npm test` and `npm run check` run.
 * @typedef {{ name: string, args: string[], mend: string }} Stage
 */

/** @param {string} place in node_modules */
const tool = (place) => join(thisProject.packages, place);

/** The checks without the tests, each with the mend to name when it fails. @type {Stage[]} */
export const staticStages = [
  {
    name: 'types',
    args: [tool('typescript/bin/tsc'), '--noEmit', '-p', 'tsconfig.json'],
    mend: 'mend the places named; `npx tsc --noEmit -p .` runs only this',
  },
  {
    name: 'page types',
    args: [tool('typescript/bin/tsc'), '--noEmit', '-p', 'src/web'],
    mend: 'mend the places named; `npx tsc --noEmit -p src/web` runs only this',
  },
  {
    name: 'lint',
    // Without eslint's cache: its rules on types and imports look beyond the file that changed.
    args: [tool('eslint/bin/eslint.js'), '.', '--max-warnings=0'],
    mend: '`npm run fix` mends what can be mended by itself; the rest is named with its rule',
  },
  {
    name: 'cycles',
    // The same rule in ESLint parses every file a second time: half a minute against two seconds.
    args: [
      tool('oxlint/bin/oxlint'),
      ...['--import-plugin', '--allow=all', '--deny=import/no-cycle'],
      ...['src', 'tests', 'migrations'],
    ],
    mend: 'move what both modules need into a third that imports neither',
  },
  {
    name: 'format',
    args: [
      tool('prettier/bin/prettier.cjs'),
      '.',
      '--check',
      '--log-level=warn',
      '--cache',
      '--cache-location',
      '.tmp/format-cache',
    ],
    mend: '`npm run fix` formats the files named',
  },
  {
    name: 'schema',
    args: [thisProject.main, 'schema', '--check'],
    mend: '`npm run fix` writes schema/schema.graphql anew; declare a breaking change in CHANGELOG.md',
  },
  {
    name: 'spelling',
    args: [
      tool('cspell/bin.mjs'),
      '--no-progress',
      '--no-summary',
      '--unique',
      '--cache',
      '--cache-location',
      '.tmp/spelling-cache',
      '--cache-strategy',
      'content',
      '.',
    ],
    mend: 'mend the spelling, or add a real word to .vocabulary.txt',
  },
];

/** Stands in for the whole suite in `npm run check`. @type {Stage} */
export const migrationsStage = {
  name: 'migrations',
  args: [tool('vitest/vitest.mjs'), 'run', 'tests/engine/migrations', '--reporter=dot'],
  mend: 'write a migration under migrations/ for the entity named (see DEVELOPERS.md)',
};
