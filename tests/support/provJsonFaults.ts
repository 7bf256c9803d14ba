/**
 * The attributes of each relation, those that it cannot be without first.
 * Source: The PROV-JSON Serialization, W3C Member Submission, 24 April 2013, its JSON schema
 * (`required` and `properties` of each relation).
 */
const relations: Readonly<Record<string, readonly [required: string[], optional: string[]]>> = {
  wasGeneratedBy: [['entity'], ['activity', 'time']],
  used: [['activity'], ['entity', 'time']],
  wasInformedBy: [['informed', 'informant'], []],
  wasStartedBy: [['activity'], ['trigger', 'starter', 'time']],
  wasEndedBy: [['activity'], ['trigger', 'ender', 'time']],
  wasInvalidatedBy: [['entity'], ['activity', 'time']],
  wasDerivedFrom: [
    ['generatedEntity', 'usedEntity'],
    ['activity', 'generation', 'usage'],
  ],
  wasAttributedTo: [['entity', 'agent'], []],
  wasAssociatedWith: [['activity'], ['agent', 'plan']],
  actedOnBehalfOf: [['delegate', 'responsible'], ['activity']],
  wasInfluencedBy: [['influencee', 'influencer'], []],
  specializationOf: [['specificEntity', 'generalEntity'], []],
  alternateOf: [['alternate1', 'alternate2'], []],
  hadMember: [['collection', 'entity'], []],
};
const everywhere = ['type', 'label', 'role', 'location', 'value'];
/** Relations without attributes of their own (`additionalProperties: false`). */
const bare = ['specializationOf', 'alternateOf', 'hadMember'];
const things: Readonly<Record<string, readonly string[]>> = {
  entity: [],
  activity: ['startTime', 'endTime'],
  agent: [],
};
const dateTime = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?(Z|[+-]\d\d:\d\d)?$/;

type Statement = Record<string, unknown>;

/** What in a PROV-JSON document is not as the submission has it; empty when all is. */
export function provJsonFaults(document: Record<string, Record<string, Statement>>): string[] {
  const declared = new Set([...Object.keys(document['prefix'] ?? {}), 'prov', 'xsd', '_']);
  const hasDefault = 'default' in (document['prefix'] ?? {});
  const nameFault = (name: string): string[] => {
    const [prefix = '', rest] = name.split(':');
    const isNamed = rest === undefined ? hasDefault : declared.has(prefix);
    return isNamed ? [] : [`${name}: its prefix is not declared`];
  };
  return Object.entries(document).flatMap(([sort, statements]): string[] => {
    if (sort === 'prefix' || sort === 'bundle') return [];
    const relation = relations[sort];
    if (!relation && !(sort in things)) return [`${sort} is no part of PROV-JSON`];
    const [required, optional] = relation ?? [[], things[sort] ?? []];
    const also = bare.includes(sort) ? [] : everywhere;
    return Object.entries(statements).flatMap(([id, statement]) => [
      ...nameFault(id),
      ...required
        .filter((name) => !(`prov:${name}` in statement))
        .map((name) => `${id} lacks prov:${name}`),
      ...Object.entries(statement).flatMap(([key, value]): string[] => {
        const own = key.startsWith('prov:') ? key.slice('prov:'.length) : null;
        if (own === null)
          return also.length === 0 ? [`${id}: ${key} is not known here`] : nameFault(key);
        if (![...required, ...optional, ...also].includes(own))
          return [`${id}: ${key} is not known here`];
        if (/time$/i.test(own))
          return dateTime.test(String(value)) ? [] : [`${id}: ${key} is no xsd:dateTime`];
        return relation && !everywhere.includes(own) ? nameFault(String(value)) : [];
      }),
    ]);
  });
}
