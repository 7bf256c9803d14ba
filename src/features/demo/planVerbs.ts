import { z } from 'zod';
import { keepBaseline } from '../baselines/keepBaseline.js';
import { setProjectPriority } from '../forecast/setProjectPriority.js';
import { declareAway } from '../pace/declareAway.js';
import { storyVerb, text } from './storyEvent.js';

export const planVerbs = {
  keepPlan: storyVerb(
    'keepBaseline',
    { project: text, hoursPerWeek: z.number().positive(), note: text.optional() },
    ({ work, names, item }, { project, hoursPerWeek, note }) =>
      keepBaseline(work, {
        projectId: names.id('project', `${item} ${project}`),
        hoursPerWeek,
        note: note ?? null,
      }),
  ),

  prioritise: storyVerb(
    'setProjectPriority',
    { project: text, place: z.int().positive() },
    ({ work, names, item }, { project, place }) =>
      setProjectPriority(work, { projectId: names.id('project', `${item} ${project}`), place }),
  ),

  away: storyVerb(
    'declareAway',
    { firstDay: text, lastDay: text, isYearly: z.boolean().default(false), note: text.optional() },
    ({ work, clock }, { firstDay, lastDay, isYearly, note }) =>
      declareAway(work, {
        fromOn: clock.day(firstDay),
        untilOn: clock.day(lastDay),
        isYearly,
        note: note ?? null,
      }),
  ),
};
