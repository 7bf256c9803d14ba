/**
 * A PROV document as PROV-JSON has it (W3C Member Submission, 24 April 2013): for each sort of
 * statement a map from an id to its attributes.
 */
export interface ProvDocument {
  prefix: Record<string, string>;
  entity: Record<string, ProvAttributes>;
  activity: Record<string, ProvAttributes>;
  agent: Record<string, ProvAttributes>;
  wasGeneratedBy: Record<string, ProvAttributes>;
  used: Record<string, ProvAttributes>;
  wasInvalidatedBy: Record<string, ProvAttributes>;
  wasDerivedFrom: Record<string, ProvAttributes>;
  wasAttributedTo: Record<string, ProvAttributes>;
  wasAssociatedWith: Record<string, ProvAttributes>;
  specializationOf: Record<string, ProvAttributes>;
  wasInfluencedBy: Record<string, ProvAttributes>;
}

export type ProvAttributes = Record<string, ProvValue | ProvValue[]>;
export type ProvValue = string | { $: string; type: string };

export const provPrefixes = {
  prov: 'http://www.w3.org/ns/prov#',
  xsd: 'http://www.w3.org/2001/XMLSchema#',
  rdfs: 'http://www.w3.org/2000/01/rdf-schema#',
  crm: 'http://www.cidoc-crm.org/cidoc-crm/',
  reglow: 'urn:reglow:',
} as const;

export const emptyDocument = (): ProvDocument => ({
  prefix: {
    xsd: provPrefixes.xsd,
    rdfs: provPrefixes.rdfs,
    crm: provPrefixes.crm,
    reglow: provPrefixes.reglow,
  },
  entity: {},
  activity: {},
  agent: {},
  wasGeneratedBy: {},
  used: {},
  wasInvalidatedBy: {},
  wasDerivedFrom: {},
  wasAttributedTo: {},
  wasAssociatedWith: {},
  specializationOf: {},
  wasInfluencedBy: {},
});

/** The name of a thing as the value of an attribute. */
export const qualified = (name: string): ProvValue => ({ $: name, type: 'xsd:QName' });

/** A day as an instant: its beginning, in UTC, since nobody knows the hour. */
export const instantOf = (day: string): string => `${day}T00:00:00Z`;
