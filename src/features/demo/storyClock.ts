import { DemoClock } from './demoClock.js';
import type { DemoFile } from './demoFiles.js';
import { DemoProblem } from './demoProblem.js';

/** The clock by which the files tell their story. @throws DemoProblem when none says whose it is. */
export function storyClock(files: readonly DemoFile[], folder: string, now: Date) {
  const collection = files.flatMap((file) => file.collection ?? [])[0];
  if (!collection) throw new DemoProblem(folder, 'No file here says whose collection it is.');
  const { zone, referenceDay, begunAt } = collection;
  const today = now.toLocaleDateString('sv-SE', { timeZone: zone });
  return { clock: new DemoClock(zone, referenceDay, today), begunAt, zone };
}
