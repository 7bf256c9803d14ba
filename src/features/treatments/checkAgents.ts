import type { Checklist } from '../../db/checklist.js';
import { agentsMeeting } from '../../domain/treatments/agentsMeeting.js';
import { dilutionVolumes } from '../../domain/treatments/dilutionVolumes.js';
import { agentCatalogue } from './agentCatalogue.js';
import type { AgentKind } from './agentKind.js';
import type { TreatmentAgentInput } from './treatment.inputs.js';
import type { TreatmentAgentEntity } from './treatmentAgent.entity.js';

export type CheckedAgent = Pick<
  TreatmentAgentEntity,
  'ordinal' | 'kind' | 'name' | 'agentParts' | 'waterParts'
>;

/** The agents of one treatment, in the order given. */
export function checkAgents(
  check: Checklist,
  agents: readonly TreatmentAgentInput[],
): CheckedAgent[] {
  const countFits = agents.length >= 1 && agents.length <= 10;
  check.that(countFits, `Name from 1 to 10 agents; these are ${agents.length}.`, ['agents']);
  return agents.map(({ kind, name, dilution }, ordinal) => {
    const path = ['agents', String(ordinal)];
    if (dilution) checkDilution(check, dilution, [...path, 'dilution']);
    return {
      ordinal,
      kind,
      name: typeof name === 'string' ? check.words(name, [...path, 'name']) : null,
      agentParts: dilution?.agentParts ?? null,
      waterParts: dilution?.waterParts ?? null,
    };
  });
}

function checkDilution(
  check: Checklist,
  { agentParts, waterParts }: { agentParts: string; waterParts: string },
  path: string[],
): void {
  try {
    dilutionVolumes(agentParts, waterParts, '1');
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    check.refuse(error.message, path);
  }
}

/** Refuses agents that must not meet, unless somebody answers for it. */
export function refuseMeeting(
  check: Checklist,
  kinds: readonly AgentKind[],
  isOverridden: boolean,
): void {
  const meeting = agentsMeeting(kinds, agentCatalogue.forbiddenPairs);
  if (isOverridden && meeting.length === 0) {
    check.refuse('These agents may be used together: leave the override out.', ['override']);
  }
  if (isOverridden) return;
  for (const { why } of meeting) {
    const message = `${why} Use one, rinse, and record the other by itself; or say in \`override\` who answers for it and why.`;
    check.add({ code: 'CONFLICT', message, path: ['agents'] });
  }
}
