import { describe, expect, it } from 'vitest';
import { provJsonFaults } from '../support/provJsonFaults.js';
import { brokenOrderings } from '../support/provOrder.js';
import { provPrimer, provPublication } from '../support/provPrimer.js';

type Changes = Record<string, Record<string, Record<string, string>>>;
const withMore = (more: Changes) =>
  Object.fromEntries<Changes[string]>(
    [...new Set([...Object.keys(provPrimer), ...Object.keys(more)])].map((sort) => [
      sort,
      { ...(provPrimer as unknown as Changes)[sort], ...more[sort] },
    ]),
  );

describe.each([
  ['the PROV Model Primer', provPrimer],
  ['the publication of PROV-DM', provPublication],
])('%s', (_, document) => {
  it('is sound PROV-JSON that breaks no constraint', () => {
    expect(provJsonFaults(document as never)).toEqual([]);
    expect(brokenOrderings(document)).toEqual([]);
  });
});

// Each adds to the Primer's example what the named constraint of PROV-CONSTRAINTS forbids there.
describe('the Primer, made to break a constraint', () => {
  const derived = (generated: string, from: string) => ({
    'prov:generatedEntity': generated,
    'prov:usedEntity': from,
  });
  const correct = 'ex:correct';
  const at = (activity: string, entity: string, time: string) => ({
    'prov:activity': activity,
    'prov:entity': entity,
    'prov:time': time,
  });
  it.each<[number, string, Changes]>([
    [
      30,
      'an activity ends before it starts',
      {
        activity: {
          [correct]: {
            'prov:startTime': '2012-04-01T15:21:00',
            'prov:endTime': '2012-03-31T09:21:00',
          },
        },
      },
    ],
    [
      33,
      'it uses before it starts',
      {
        used: { '_:x': at(correct, 'ex:regionList', '2012-03-30T00:00:00') },
      },
    ],
    [
      34,
      'it generates after it ended',
      {
        wasGeneratedBy: { '_:x': at(correct, 'ex:report', '2012-04-02T00:00:00') },
      },
    ],
    [
      35,
      'it is informed by one that starts after it ended',
      {
        activity: { 'ex:later': { 'prov:startTime': '2012-05-01T00:00:00' } },
        wasInformedBy: { '_:x': { 'prov:informed': correct, 'prov:informant': 'ex:later' } },
      },
    ],
    [
      36,
      'an entity is invalidated before it is generated',
      {
        wasInvalidatedBy: { '_:x': at('ex:loss', 'ex:chart2', '2012-03-01T00:00:00') },
      },
    ],
    [
      37,
      'an entity is used before it is generated',
      {
        used: { '_:x': at('ex:print', 'ex:chart2', '2012-03-31T00:00:00') },
      },
    ],
    [
      38,
      'an entity is used after it is invalidated',
      {
        wasInvalidatedBy: { '_:x': at('ex:loss', 'ex:chart2', '2012-04-02T00:00:00') },
        used: { '_:y': at('ex:print', 'ex:chart2', '2012-04-03T00:00:00') },
      },
    ],
    [
      41,
      'a usage that a derivation names comes after the generation',
      {
        used: { '_:x': at('ex:compile2', 'ex:dataSet2', '2012-04-02T00:00:00') },
        wasDerivedFrom: {
          '_:y': {
            ...derived('ex:chart2', 'ex:dataSet2'),
            'prov:activity': 'ex:compile2',
            'prov:generation': '_:g4',
            'prov:usage': '_:x',
          },
        },
      },
    ],
    [
      42,
      'two are derived from one another',
      {
        wasDerivedFrom: { '_:x': derived('ex:dataSet1', 'ex:chart2') },
      },
    ],
    [
      43,
      'a trigger is generated after it started an activity',
      {
        wasStartedBy: { '_:x': { 'prov:activity': correct, 'prov:trigger': 'ex:chart2' } },
        activity: {
          [correct]: {
            'prov:startTime': '2012-03-31T09:21:00',
            'prov:endTime': '2012-04-01T15:00:00',
          },
        },
      },
    ],
    [
      44,
      'a trigger is invalidated before it ended an activity',
      {
        wasEndedBy: { '_:x': { 'prov:activity': correct, 'prov:trigger': 'ex:chart1' } },
        wasInvalidatedBy: { '_:y': at('ex:loss', 'ex:chart1', '2012-03-30T00:00:00') },
      },
    ],
    [
      45,
      'a specialization is generated before what it is of',
      {
        wasGeneratedBy: {
          '_:x': at('ex:write', 'ex:article', '2012-04-03T00:00:00'),
          '_:y': at('ex:edit', 'ex:articleV2', '2012-04-02T00:00:00'),
        },
      },
    ],
    [
      46,
      'a specialization outlives what it is of',
      {
        wasInvalidatedBy: {
          '_:x': at('ex:loss', 'ex:article', '2012-05-01T00:00:00'),
          '_:y': at('ex:loss', 'ex:articleV2', '2012-05-02T00:00:00'),
        },
      },
    ],
    [
      47,
      'an agent is generated after what it was responsible for',
      {
        wasGeneratedBy: { '_:x': at('ex:birth', 'ex:derek', '2012-05-01T00:00:00') },
        wasAssociatedWith: { '_:y': { 'prov:activity': correct, 'prov:agent': 'ex:derek' } },
      },
    ],
    [
      48,
      'an agent is generated after what is attributed to it',
      {
        wasGeneratedBy: { '_:x': at('ex:birth', 'ex:derek', '2012-03-03T00:00:00') },
      },
    ],
    [
      52,
      'an entity is a specialization of itself',
      {
        specializationOf: {
          '_:x': { 'prov:specificEntity': 'ex:chart1', 'prov:generalEntity': 'ex:chart1' },
        },
      },
    ],
    [55, 'an entity is an activity', { activity: { 'ex:chart1': {} } }],
  ])('%i: %s', (constraint, _, more) => {
    expect(brokenOrderings(withMore(more))).toContain(constraint);
  });

  // PROV-JSON, section 3 and its schema.
  it.each<[string, Changes, string]>([
    [
      'a derivation of nothing',
      { wasDerivedFrom: { '_:x': { 'prov:generatedEntity': 'ex:chart2' } } },
      'lacks prov:usedEntity',
    ],
    [
      'a prefix that is not declared',
      { entity: { 'other:thing': {} } },
      'its prefix is not declared',
    ],
    [
      'a day for an instant',
      { wasGeneratedBy: { '_:x': { 'prov:entity': 'ex:chart2', 'prov:time': '2012-04-01' } } },
      'is no xsd:dateTime',
    ],
    ['a relation of another name', { wasMadeOf: {} }, 'is no part of PROV-JSON'],
    [
      'an attribute of a specialization',
      {
        specializationOf: {
          '_:x': {
            'prov:specificEntity': 'ex:chart2',
            'prov:generalEntity': 'ex:chart1',
            'prov:label': 'x',
          },
        },
      },
      'is not known here',
    ],
  ])('is no sound PROV-JSON with %s', (_, more, fault) => {
    expect(provJsonFaults(withMore(more)).join('\n')).toContain(fault);
  });
});
