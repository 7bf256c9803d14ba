import {
  provPrefixes,
  type ProvAttributes,
  type ProvDocument,
  type ProvValue,
} from './provDocument.js';

const ownTypes = { entity: 'prov:Entity', activity: 'prov:Activity', agent: 'prov:Agent' } as const;

/** Each relation as PROV-O names it, with the attributes that hold its two ends. */
const relations = [
  ['wasGeneratedBy', 'prov:entity', 'prov:activity', 'prov:generatedAtTime'],
  ['wasInvalidatedBy', 'prov:entity', 'prov:activity', 'prov:invalidatedAtTime'],
  ['used', 'prov:activity', 'prov:entity', null],
  ['wasDerivedFrom', 'prov:generatedEntity', 'prov:usedEntity', null],
  ['wasAttributedTo', 'prov:entity', 'prov:agent', null],
  ['wasAssociatedWith', 'prov:activity', 'prov:agent', null],
  ['specializationOf', 'prov:specificEntity', 'prov:generalEntity', null],
  ['wasInfluencedBy', 'prov:influencee', 'prov:influencer', null],
] as const;

const dateTimes = ['generatedAtTime', 'invalidatedAtTime', 'startedAtTime', 'endedAtTime'] as const;

const renamed: Readonly<Record<string, string>> = {
  'prov:label': 'rdfs:label',
  'prov:startTime': 'prov:startedAtTime',
  'prov:endTime': 'prov:endedAtTime',
  'prov:location': 'reglow:keptAt',
};

interface Node {
  '@id': string;
  '@type': string[];
  [property: string]: unknown;
}

/** The same document in the terms of PROV-O (W3C Recommendation, 30 April 2013), as JSON-LD. */
export function provJsonLd(document: ProvDocument): { '@context': object; '@graph': Node[] } {
  const nodes = new Map<string, Node>();
  for (const sort of ['entity', 'activity', 'agent'] as const) {
    for (const [id, attributes] of Object.entries(document[sort])) {
      nodes.set(id, nodeOf(id, ownTypes[sort], attributes));
    }
  }
  for (const [relation, subject, object, time] of relations) {
    for (const attributes of Object.values(document[relation])) {
      const node = nodes.get(textOf(attributes[subject]));
      if (!node) continue;
      const linked = { '@id': textOf(attributes[object]) };
      add(node, `prov:${relation}`, linked);
      const at = attributes['prov:time'];
      if (time !== null && at !== undefined) add(node, time, at);
      if (relation === 'wasDerivedFrom') add(node, 'prov:wasRevisionOf', linked);
    }
  }
  const context = {
    ...provPrefixes,
    ...Object.fromEntries(dateTimes.map((name) => [`prov:${name}`, { '@type': 'xsd:dateTime' }])),
    'crm:P82a_begin_of_the_begin': { '@type': 'xsd:date' },
    'crm:P82b_end_of_the_end': { '@type': 'xsd:date' },
  };
  return { '@context': context, '@graph': [...nodes.values()] };
}

function nodeOf(id: string, type: string, attributes: ProvAttributes): Node {
  const node: Node = { '@id': id, '@type': [type] };
  for (const [name, value] of Object.entries(attributes)) {
    if (name === 'prov:type') node['@type'].push(textOf(value));
    else add(node, renamed[name] ?? name, value);
  }
  return node;
}

function add(node: Node, property: string, value: unknown): void {
  const known = node[property];
  node[property] = known === undefined ? value : [known, value].flat();
}

const textOf = (value: ProvValue | ProvValue[] | undefined): string => {
  if (typeof value === 'string') return value;
  return value === undefined || Array.isArray(value) ? '' : value.$;
};
