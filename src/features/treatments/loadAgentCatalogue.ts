import { z } from 'zod';
import { readSeedFile } from '../reference/readSeedFile.js';
import { AgentKind } from './agentKind.js';

const sentence = z.string().trim().min(1);
const kind = z.enum(AgentKind);
const everyKind = Object.keys(AgentKind) as AgentKind[];

const shape = z.strictObject({
  agents: z.record(
    z.string(),
    z.strictObject({
      cautions: z.array(sentence).min(1),
      protection: z.array(sentence),
      source: sentence,
    }),
  ),
  forbiddenPairs: z.array(
    z.strictObject({ agents: z.tuple([kind, kind]), why: sentence, source: sentence }),
  ),
});

/** What to know of one kind of agent. */
export interface AgentGuide {
  kind: AgentKind;
  cautions: string[];
  protection: string[];
  source: string;
}

export interface AgentCatalogue {
  guides: ReadonlyMap<AgentKind, AgentGuide>;
  forbiddenPairs: readonly z.infer<typeof shape>['forbiddenPairs'][number][];
}

/** @throws Error that names the file and what is wrong with it, or the kinds that are missing. */
export function loadAgentCatalogue(path: string): AgentCatalogue {
  const { agents, forbiddenPairs } = readSeedFile(path, shape);
  const missing = everyKind.filter((name) => agents[name] === undefined);
  if (missing.length > 0) throw new Error(`${path} says nothing of ${missing.join(', ')}.`);
  const unknown = Object.keys(agents).filter((name) => !(name in AgentKind));
  if (unknown.length > 0) throw new Error(`${path} names no kind of agent: ${unknown.join(', ')}.`);
  const guides = everyKind.flatMap((name) => {
    const guide = agents[name];
    return guide ? [[name, { kind: name, ...guide }] as const] : [];
  });
  return { guides: new Map(guides), forbiddenPairs };
}
