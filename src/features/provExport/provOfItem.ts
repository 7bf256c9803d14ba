import type { ChainEvent, Holding } from '../../domain/provenance/chainEvent.js';
import { chainOf, collectionItself } from '../provenance/chainOf.js';
import { crmClass } from './crmClass.js';
import {
  emptyDocument,
  instantOf,
  qualified,
  type ProvAttributes,
  type ProvDocument,
} from './provDocument.js';
import type { ProvFacts } from './provFacts.reads.js';

const itemName = (id: string): string => `reglow:item/${id}`;
const agentName = (id: string): string =>
  id === collectionItself ? 'reglow:collection' : `reglow:party/${id}`;
const eventName = (id: string): string => `reglow:event/${id}`;

/**
 * The past of an item as W3C PROV: the item is an entity, each time in one person's hands a
 * specialization of it, attributed to its holder; what happened is an activity, which ends one
 * holding and begins the next.
 *
 * PROV times are exact. They are given where a date is one day; otherwise the first and last day are
 * beside it as the bounds of CIDOC CRM (P82a, P82b), with the date as written.
 */
export function provOfItem(facts: ProvFacts, today: string): ProvDocument {
  const document = emptyDocument();
  const { item, events, acquisitions, disposals } = facts;
  const own = itemName(item.id);
  document.entity[own] = {
    'prov:label': item.inventoryNumber,
    'prov:type': qualified('crm:E22_Human-Made_Object'),
  };
  for (const event of events) {
    document.activity[eventName(event.id)] = {
      'prov:label': event.kind.toLowerCase(),
      'prov:type': qualified(crmClass[event.kind]),
      'reglow:confidence': facts.confidences.get(event.id)?.level ?? 'CLAIMED',
      ...(event.dateEdtf !== null && { 'reglow:edtf': event.dateEdtf }),
      ...timesOf(event.earliestOn, event.latestOn),
    };
    associate(document, event.id, event.fromPartyId, 'from');
    associate(document, event.id, event.toPartyId, 'to');
  }
  for (const { id, on } of [...acquisitions, ...disposals]) {
    document.activity[eventName(id)] = {
      'prov:label': 'changed hands',
      'prov:type': qualified('crm:E8_Acquisition'),
      ...timesOf(on, on),
    };
  }
  for (const { id, partyId } of [...acquisitions, ...disposals])
    associate(document, id, partyId, 'other');
  for (const { eventId, partyId, role } of facts.roles) {
    associate(document, eventId, partyId, role.toLowerCase());
  }
  addHoldings(document, facts, chainOf(facts, today).held);
  addMaking(document, facts);
  addEvidence(document, facts);
  for (const { id, kind, name } of facts.parties) {
    const type = kind === 'PERSON' ? 'prov:Person' : 'prov:Organization';
    document.agent[agentName(id)] = { 'prov:label': name, 'prov:type': qualified(type) };
  }
  return document;
}

function addHoldings(document: ProvDocument, facts: ProvFacts, held: readonly Holding[]): void {
  const own = itemName(facts.item.id);
  const nameOf = (place: number): string => `${own}/held/${place + 1}`;
  for (const [place, { partyId, from, until }] of held.entries()) {
    const name = nameOf(place);
    document.entity[name] = { 'prov:label': `${facts.item.inventoryNumber}, holding ${place + 1}` };
    document.specializationOf[`_:s${place}`] = {
      'prov:specificEntity': name,
      'prov:generalEntity': own,
    };
    if (partyId !== null) {
      if (partyId === collectionItself) {
        document.agent[agentName(partyId)] = { 'prov:label': 'The collection' };
      }
      document.wasAttributedTo[`_:t${place}`] = {
        'prov:entity': name,
        'prov:agent': agentName(partyId),
      };
    }
    if (from) document.wasGeneratedBy[`_:g${place}`] = at(name, from);
    if (until) {
      document.wasInvalidatedBy[`_:i${place}`] = at(name, until);
      document.used[`_:u${place}`] = at(name, until);
    }
    const before = held[place - 1];
    if (before?.until && before.until === from) {
      document.wasDerivedFrom[`_:d${place}`] = {
        'prov:generatedEntity': name,
        'prov:usedEntity': nameOf(place - 1),
        'prov:type': qualified('prov:Revision'),
      };
    }
  }
}

/** Only one making can generate the item; where several are on record none is said to. */
function addMaking(document: ProvDocument, { item, events }: ProvFacts): void {
  const [making, ...others] = events.filter(({ kind }) => kind === 'MADE');
  if (making && others.length === 0) {
    document.wasGeneratedBy['_:making'] = {
      'prov:entity': itemName(item.id),
      'prov:activity': eventName(making.id),
      ...timeOf(making.earliestOn, making.latestOn),
    };
  }
  for (const { id, kind } of events) {
    if (!['ALTERED', 'REPAIRED', 'USED', 'SHOWN', 'STORED', 'LENT'].includes(kind)) continue;
    document.used[`_:h${id}`] = {
      'prov:activity': eventName(id),
      'prov:entity': itemName(item.id),
    };
  }
}

function addEvidence(document: ProvDocument, facts: ProvFacts): void {
  for (const { id, eventId, bearing, kind, strength, description, keptAt } of facts.evidence) {
    const name = `reglow:evidence/${id}`;
    document.entity[name] = {
      'prov:label': description,
      'reglow:bearing': bearing,
      'reglow:kind': kind,
      'reglow:strength': strength,
      ...(keptAt !== null && { 'prov:location': keptAt }),
    };
    document.wasInfluencedBy[`_:e${id}`] = {
      'prov:influencee': name,
      'prov:influencer': eventName(eventId),
    };
  }
}

function associate(
  document: ProvDocument,
  eventId: string,
  partyId: string | null,
  role: string,
): void {
  if (partyId === null) return;
  document.wasAssociatedWith[`_:a${eventId}-${partyId}-${role}`] = {
    'prov:activity': eventName(eventId),
    'prov:agent': agentName(partyId),
    'prov:role': role,
  };
}

const at = (entity: string, { eventId, earliest, latest }: ChainEvent): ProvAttributes => ({
  'prov:entity': entity,
  'prov:activity': eventName(eventId),
  ...timeOf(earliest, latest),
});

const timeOf = (earliest: string | null, latest: string | null): ProvAttributes =>
  earliest !== null && earliest === latest ? { 'prov:time': instantOf(earliest) } : {};

function timesOf(earliest: string | null, latest: string | null): ProvAttributes {
  if (earliest !== null && earliest === latest) {
    return { 'prov:startTime': instantOf(earliest), 'prov:endTime': instantOf(earliest) };
  }
  return {
    ...(earliest !== null && { 'crm:P82a_begin_of_the_begin': earliest }),
    ...(latest !== null && { 'crm:P82b_end_of_the_end': latest }),
  };
}
