// `npm run fix`: mends what can be mended by itself.
import { join } from 'node:path';
import { prepareProgram } from '../../src/prepare/prepare.mjs';
import { thisProject } from '../../src/prepare/projectPaths.mjs';
import { runStage } from './runStage.mjs';

const tool = (/** @type {string} */ place) => join(thisProject.packages, place);

await prepareProgram(thisProject);
const mends = [
  { name: 'schema', args: [thisProject.main, 'schema', '--write'] },
  { name: 'lint', args: [tool('eslint/bin/eslint.js'), '.', '--fix'] },
  { name: 'format', args: [tool('prettier/bin/prettier.cjs'), '.', '--write', '--log-level=warn'] },
];
for (const { name, args } of mends) {
  const { hasPassed } = await runStage({ name, args, mend: '' }, { isShownLive: true });
  console.log(`${name.padEnd(11)}${hasPassed ? 'done' : 'not all could be mended; see above'}`);
  if (!hasPassed) process.exitCode = 1;
}
