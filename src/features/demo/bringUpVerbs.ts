import { z } from 'zod';
import { globalId } from '../../api/kit/globalId.js';
import { recordBringUpStep } from '../bringUp/recordBringUpStep.js';
import { startBringUp } from '../bringUp/startBringUp.js';
import { storyVerb, text } from './storyEvent.js';

const reading = z.strictObject({ quantity: text, value: text, unit: text });

export const bringUpVerbs = {
  'bring up': storyVerb(
    'startBringUp',
    { run: text, procedure: text, by: text.optional(), note: text.optional() },
    async ({ work, names, item }, { run, procedure, by, note }) => {
      const key = `${item} ${run}`;
      const id = await startBringUp(work, {
        key: `demo ${key}`,
        itemId: names.id('item', item),
        procedureKey: procedure,
        startedById: names.optionalId('person', by),
        note: note ?? null,
      });
      names.keep('bring-up', key, globalId('BringUp', id));
    },
  ),

  'bring up step': storyVerb(
    'recordBringUpStep',
    {
      run: text,
      step: text,
      holds: z.array(z.boolean()).default([]),
      readings: z.array(reading).default([]),
      by: text.optional(),
      note: text.optional(),
    },
    ({ work, names, item }, { run, step, holds, readings, by, note, at }) =>
      recordBringUpStep(work, {
        key: `demo ${item} ${run} ${step} ${at}`,
        bringUpId: names.id('bring-up', `${item} ${run}`),
        stepKey: step,
        holds,
        readings,
        doneById: names.optionalId('person', by),
        note: note ?? null,
      }),
  ),
};
