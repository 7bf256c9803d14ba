import { z } from 'zod';
import { globalId } from '../../api/kit/globalId.js';
import { addMaintenanceRule } from '../use/addMaintenanceRule.js';
import { recordMaintenance } from '../use/recordMaintenance.js';
import { recordUse } from '../use/recordUse.js';
import { storyVerb, text } from './storyEvent.js';

export const useVerbs = {
  /** `at` is when it ended. */
  onAir: storyVerb(
    'recordUse',
    {
      hours: z.number().positive(),
      contacts: z.int().min(0).default(0),
      band: text.optional(),
      mode: text.optional(),
      with: z.array(text).default([]),
      by: text.optional(),
      note: text.optional(),
    },
    ({ work, names, item }, { hours, contacts, band, mode, by, note, ...event }) =>
      recordUse(work, {
        rigId: names.id('item', item),
        hours,
        contacts,
        band: band ?? null,
        mode: mode ?? null,
        accessoryIds: event.with.map((number) => names.id('item', number)),
        operatorId: names.optionalId('person', by),
        note: note ?? null,
      }),
  ),

  maintain: storyVerb(
    'addMaintenanceRule',
    {
      rule: text,
      title: text,
      everyUseHours: z.number().positive().optional(),
      everyDays: z.int().positive().optional(),
      note: text.optional(),
    },
    async ({ work, names, item }, { rule, title, everyUseHours, everyDays, note }) => {
      const id = await addMaintenanceRule(work, {
        itemId: names.id('item', item),
        title,
        everyUseHours: everyUseHours ?? null,
        everyDays: everyDays ?? null,
        note: note ?? null,
      });
      names.keep('maintenance rule', `${item} ${rule}`, globalId('MaintenanceRule', id));
    },
  ),

  maintained: storyVerb(
    'recordMaintenance',
    { rule: text, by: text.optional(), note: text.optional() },
    ({ work, names, item }, { rule, by, note }) =>
      recordMaintenance(work, {
        ruleId: names.id('maintenance rule', `${item} ${rule}`),
        doneById: names.optionalId('person', by),
        note: note ?? null,
      }),
  ),
};
