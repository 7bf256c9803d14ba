import { z } from 'zod';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { DemoClock } from './demoClock.js';
import type { DemoFile } from './demoFiles.js';
import type { DemoNames } from './demoNames.js';
import { DemoProblem } from './demoProblem.js';
import type { Happening } from './happening.js';
import { instantIn } from './instantIn.js';
import { storyVerbs } from './storyVerbs.js';

/** The events of a file's story; each is recorded when it ended. */
export function eventsOfFile(file: DemoFile, clock: DemoClock, names: DemoNames): Happening[] {
  return file.story.map((written, index) => {
    const { do: verbName, item = file.about, ...rest } = written;
    const where = `${file.path}, story entry ${index + 1} (${verbName}, ${written.at})`;
    const verb = storyVerbs.get(verbName);
    if (!verb) {
      const known = [...storyVerbs.keys()].join(', ');
      throw new DemoProblem(where, `There is no verb “${verbName}”. There are ${known}.`);
    }
    const event = verb.shape.safeParse(rest);
    if (!event.success) throw new DemoProblem(where, z.prettifyError(event.error));
    const startedAt = instantIn(clock, where, written.at);
    const { until } = event.data;
    const at = until === undefined ? startedAt : clock.nextTime(until, startedAt);
    const play = (work: UnitOfWork) =>
      verb.play({ work, clock, names, item: item ?? '' }, event.data);
    return { at, action: verb.action, where, play };
  });
}
