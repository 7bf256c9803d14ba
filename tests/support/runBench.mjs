// `npm run bench`: compiles the bench with tsc (it emits the decorator metadata that the API needs,
// and what is measured is then what is shipped) and runs it.
import { join } from 'node:path';
import { preparePackages } from '../../src/prepare/prepare.mjs';
import { thisProject } from '../../src/prepare/projectPaths.mjs';
import { runStage } from './runStage.mjs';

const compiled = join(thisProject.root, 'dist-bench');
const compiler = join(thisProject.packages, 'typescript', 'bin', 'tsc');
const bench = join(compiled, 'tests', 'bench', 'bench.js');
const steps = [
  [compiler, '-p', 'tsconfig.bench.json'],
  ['--enable-source-maps', bench, ...process.argv.slice(2)],
];

await preparePackages(thisProject);
for (const args of steps) {
  const stage = { name: 'bench', args, mend: '' };
  const { hasPassed } = await runStage(stage, { isShownLive: true });
  if (!hasPassed) process.exit(1);
}
