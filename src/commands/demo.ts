import type { Command } from 'commander';
import { AttachmentStore } from '../features/attachments/attachmentStore.js';
import { DemoProblem } from '../features/demo/demoProblem.js';
import { loadDemo } from '../features/demo/loadDemo.js';
import { loadDemoPictures } from '../features/demo/pictures/loadDemoPictures.js';
import { seedFolder } from '../features/hazards/seedFolder.js';
import { reads } from '../features/reads.js';
import { CommandFailure } from './commandFailure.js';
import type { Surroundings } from './surroundings.js';
import { withCollection } from './withCollection.js';

export const addDemo = (program: Command, around: Surroundings): Command =>
  program
    .command('demo')
    .description('Load an invented collection into an empty one, to try things out on.')
    .action(() => demo(around));

const tryNext = (address: string): string[] => [
  'Three things to try next, with the server running (npm start):',
  `  1. Open ${address} and ask which sets may go on the air, and what the others lack:`,
  '     { rigs(first: 20) { nodes { inventoryNumber readiness { level blockers { message } } } } }',
  '  2. Ask how much is left on the set on the bench:',
  '     { rig(inventoryNumber: "R-005") { completion { share } remaining { p50Hours p80Hours } } }',
  '  3. Ask what stands in the way of a story that is told of a gift:',
  '     { rig(inventoryNumber: "R-009") { provenance { contradictions { message } } } }',
];

/** Loads the demo collection. It may be done while the server runs on the same file. */
export async function demo(around: Surroundings): Promise<void> {
  const now = new Date(around.nowMs());
  const folder = seedFolder('demo');
  const store = new AttachmentStore(around.config.attachmentsFolder);
  const { events, counts, pictures } = await withCollection(around, async (database) => ({
    ...(await loadDemo(database, folder, now)),
    pictures: await loadDemoPictures(database, store, folder, { now, reads }),
  })).catch((error: unknown) => {
    if (error instanceof DemoProblem) throw new CommandFailure(error.message);
    throw error;
  });
  const many = (table: string): number => counts.get(table) ?? 0;
  const { host, port } = around.config;
  const lines = [
    `Loaded the demo collection: ${many('item')} items of ${many('model')} models, ` +
      `${many('project')} projects with ${many('task')} tasks, ${many('work_session')} work sessions, ` +
      `${many('reading')} readings, ${many('finding')} findings, ${pictures} pictures; ${events} events over the two years up to today.`,
    'People, places, makers and models in it are invented.',
    '',
    ...tryNext(`http://${host}:${port}/`),
  ];
  for (const line of lines) around.print(line);
}
