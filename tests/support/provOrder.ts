import type { ProvAttributes, ProvDocument } from '../../src/features/provExport/provDocument.js';

/** An edge "not later than" between two instants; strict: "earlier than". */
interface Edge {
  from: string;
  to: string;
  isStrict: boolean;
  constraint: number;
}

const text = (attributes: ProvAttributes, name: string): string => {
  const value = attributes[name];
  return typeof value === 'string' ? value : '';
};

/** What this check reads beside what the program writes. */
type Document = Partial<
  ProvDocument &
    Record<
      'wasStartedBy' | 'wasEndedBy' | 'wasInformedBy' | 'alternateOf' | 'actedOnBehalfOf',
      Record<string, ProvAttributes>
    >
>;

/**
 * The constraints of PROV-CONSTRAINTS (W3C Recommendation, 30 April 2013, sections 6.2 and 6.4) that
 * bear on the statements used here, by their numbers there: 30, 33 to 38, 41 to 48, 52, 55. Numbers and
 * rules are as in the source from which the working group made that text
 * (`decl('Constraint', 42, 'derivation-generation-generation-ordering', …)`).
 * @returns the numbers of constraints that the document breaks: by a cycle with a strict edge, by
 * two times in the wrong order, or by being impossible as it stands.
 */
export function brokenOrderings(document: Document): number[] {
  const edges: Edge[] = [];
  const times = new Map<string, string>();
  const edge = (constraint: number, from: string, to: string, isStrict = false): void => {
    edges.push({ from, to, isStrict, constraint });
  };
  const each = (sort: keyof Document): ProvAttributes[] =>
    Object.values((document[sort] ?? {}) as Record<string, ProvAttributes>);
  const timed = (event: string, time: unknown): void => {
    if (typeof time === 'string') times.set(event, time);
  };
  for (const [id, attributes] of Object.entries(document.activity ?? {})) {
    edge(30, `start ${id}`, `end ${id}`);
    timed(`start ${id}`, attributes['prov:startTime']);
    timed(`end ${id}`, attributes['prov:endTime']);
  }
  const during = (constraint: number, activity: string, event: string): void => {
    edge(constraint, `start ${activity}`, event);
    edge(constraint, event, `end ${activity}`);
  };
  for (const one of each('wasGeneratedBy')) {
    const entity = text(one, 'prov:entity');
    during(34, text(one, 'prov:activity'), `gen ${entity}`);
    edge(36, `gen ${entity}`, `inv ${entity}`);
    timed(`gen ${entity}`, one['prov:time']);
  }
  for (const one of each('used')) {
    const [activity, entity] = [text(one, 'prov:activity'), text(one, 'prov:entity')];
    const use = `use ${activity} ${entity}`;
    during(33, activity, use);
    edge(37, `gen ${entity}`, use);
    edge(38, use, `inv ${entity}`);
    timed(use, one['prov:time']);
  }
  for (const one of each('wasInvalidatedBy')) {
    const entity = text(one, 'prov:entity');
    during(34, text(one, 'prov:activity'), `inv ${entity}`);
    timed(`inv ${entity}`, one['prov:time']);
  }
  for (const one of each('wasInformedBy')) {
    edge(35, `start ${text(one, 'prov:informant')}`, `end ${text(one, 'prov:informed')}`);
  }
  for (const one of each('wasStartedBy')) {
    const [start, trigger] = [`start ${text(one, 'prov:activity')}`, text(one, 'prov:trigger')];
    edge(43, `gen ${trigger}`, start);
    edge(43, start, `inv ${trigger}`);
    timed(start, one['prov:time']);
  }
  for (const one of each('wasEndedBy')) {
    const [end, trigger] = [`end ${text(one, 'prov:activity')}`, text(one, 'prov:trigger')];
    edge(44, `gen ${trigger}`, end);
    edge(44, end, `inv ${trigger}`);
    timed(end, one['prov:time']);
  }
  for (const one of each('wasAssociatedWith')) {
    const [activity, agent] = [text(one, 'prov:activity'), text(one, 'prov:agent')];
    edge(47, `start ${activity}`, `inv ${agent}`);
    edge(47, `gen ${agent}`, `end ${activity}`);
  }
  for (const one of each('wasAttributedTo')) {
    edge(48, `gen ${text(one, 'prov:agent')}`, `gen ${text(one, 'prov:entity')}`);
  }
  for (const one of each('wasDerivedFrom')) {
    if (['prov:activity', 'prov:generation', 'prov:usage'].every((name) => name in one)) {
      const used = `use ${text(one, 'prov:activity')} ${text(one, 'prov:usedEntity')}`;
      edge(41, used, `gen ${text(one, 'prov:generatedEntity')}`);
    }
    edge(
      42,
      `gen ${text(one, 'prov:usedEntity')}`,
      `gen ${text(one, 'prov:generatedEntity')}`,
      true,
    );
  }
  for (const one of each('specializationOf')) {
    const [special, general] = [text(one, 'prov:specificEntity'), text(one, 'prov:generalEntity')];
    edge(45, `gen ${general}`, `gen ${special}`);
    edge(46, `inv ${special}`, `inv ${general}`);
  }
  const broken = [
    ...cycles(edges),
    ...contradictedTimes(edges, times),
    ...each('specializationOf')
      .filter((one) => text(one, 'prov:specificEntity') === text(one, 'prov:generalEntity'))
      .map(() => 52),
    ...Object.keys(document.entity ?? {})
      .filter((id) => id in (document.activity ?? {}))
      .map(() => 55),
  ];
  return [...new Set(broken)].sort((a, b) => a - b);
}

const reach = (edges: readonly Edge[], start: string): Set<string> => {
  const seen = new Set([start]);
  for (const node of seen) for (const { from, to } of edges) if (from === node) seen.add(to);
  return seen;
};

const cycles = (edges: readonly Edge[]): number[] =>
  edges
    .filter(({ isStrict, from, to }) => isStrict && reach(edges, to).has(from))
    .map(({ constraint }) => constraint);

/** Along any way of edges times may not fall. */
function contradictedTimes(edges: readonly Edge[], times: ReadonlyMap<string, string>): number[] {
  return edges.flatMap(({ from, to, constraint }) => {
    const before = [...times].filter(([event]) => reach(edges, event).has(from));
    const after = [...reach(edges, to)].flatMap((event) => times.get(event) ?? []);
    const latest = before
      .map(([, time]) => time)
      .sort()
      .at(-1);
    const earliest = after.sort()[0];
    return latest !== undefined && earliest !== undefined && latest > earliest ? constraint : [];
  });
}
