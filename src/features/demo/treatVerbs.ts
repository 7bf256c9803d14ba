import { z } from 'zod';
import { Zone } from '../inspections/zone.js';
import { AgentKind } from '../treatments/agentKind.js';
import { recordTreatment } from '../treatments/recordTreatment.js';
import { SurfaceMaterial } from '../treatments/surfaceMaterial.js';
import { TreatmentOutcome } from '../treatments/treatmentOutcome.js';
import { storyVerb, text } from './storyEvent.js';

const agent = z.strictObject({
  kind: z.enum(AgentKind),
  name: text.optional(),
  /** Parts of agent to parts of water: `1:9`. */
  dilution: z
    .string()
    .regex(/^\d+(\.\d+)?:\d+(\.\d+)?$/)
    .optional(),
});

export const treatVerbs = {
  treat: storyVerb(
    'recordTreatment',
    {
      surface: text,
      material: z.enum(SurfaceMaterial),
      agents: z.array(agent).min(1),
      zone: z.enum(Zone).optional(),
      dwellMinutes: z.int().optional(),
      passes: z.int().default(1),
      isRinsed: z.boolean(),
      outcome: z.enum(TreatmentOutcome),
      result: text.optional(),
      remains: text.optional(),
      task: text.optional(),
      finding: text.optional(),
      by: text.optional(),
    },
    ({ work, names, item }, { agents, task, finding, by, ...event }) =>
      recordTreatment(work, {
        surface: event.surface,
        material: event.material,
        passes: event.passes,
        isRinsed: event.isRinsed,
        outcome: event.outcome,
        itemId: names.id('item', item),
        zone: event.zone ?? null,
        dwellMinutes: event.dwellMinutes ?? null,
        result: event.result ?? null,
        remains: event.remains ?? null,
        taskId: names.optionalId('task', task === undefined ? undefined : `${item} ${task}`),
        findingId: names.optionalId(
          'finding',
          finding === undefined ? undefined : `${item} ${finding}`,
        ),
        treatedById: names.optionalId('person', by),
        treatedAt: new Date(work.now),
        agents: agents.map(({ kind, name, dilution }) => {
          const [agentParts = '', waterParts = ''] = dilution?.split(':') ?? [];
          return {
            kind,
            name: name ?? null,
            dilution: dilution === undefined ? null : { agentParts, waterParts },
          };
        }),
      }),
  ),
};
