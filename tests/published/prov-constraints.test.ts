import { describe, expect, it } from 'vitest';
import { brokenOrderings } from '../support/provOrder.js';

const time = (day: string) => `${day}T00:00:00Z`;

// W3C, Constraints of the PROV Data Model (Recommendation, 30 April 2013), section 6.2, by number.
describe('the check of PROV orderings finds what the constraints forbid', () => {
  it('42: nothing is derived from what is derived from it', () => {
    const derived = (generated: string, used: string) => ({
      'prov:generatedEntity': generated,
      'prov:usedEntity': used,
    });
    const document = { wasDerivedFrom: { '_:1': derived('a', 'b'), '_:2': derived('b', 'a') } };
    expect(brokenOrderings(document)).toEqual([42]);
    expect(brokenOrderings({ wasDerivedFrom: { '_:1': derived('a', 'b') } })).toEqual([]);
  });

  it('37: nothing is used before it is generated', () => {
    const used = {
      'prov:activity': 'contest',
      'prov:entity': 'set',
      'prov:time': time('1965-01-01'),
    };
    const made = (day: string) => ({
      '_:g': { 'prov:entity': 'set', 'prov:activity': 'making', 'prov:time': time(day) },
    });
    const later = { wasGeneratedBy: made('1970-01-01'), used: { '_:u': used } };
    expect(brokenOrderings(later)).toContain(37);
    expect(brokenOrderings({ ...later, wasGeneratedBy: made('1960-01-01') })).toEqual([]);
  });

  it('30, 34, 36: an activity does not end before it starts, nor bring forth afterwards', () => {
    const activity = {
      making: { 'prov:startTime': time('1960-02-01'), 'prov:endTime': time('1960-01-01') },
    };
    expect(brokenOrderings({ activity })).toEqual([30]);
    const wasGeneratedBy = {
      '_:g': { 'prov:entity': 'set', 'prov:activity': 'making', 'prov:time': time('1961-01-01') },
    };
    const sound = {
      making: { 'prov:startTime': time('1960-01-01'), 'prov:endTime': time('1960-02-01') },
    };
    expect(brokenOrderings({ activity: sound, wasGeneratedBy })).toContain(34);
    const wasInvalidatedBy = {
      '_:i': { 'prov:entity': 'set', 'prov:activity': 'fire', 'prov:time': time('1950-01-01') },
    };
    expect(brokenOrderings({ wasGeneratedBy, wasInvalidatedBy })).toContain(36);
  });

  it('45, 46: a specialization lives no longer than what it is of', () => {
    const specializationOf = {
      '_:s': { 'prov:specificEntity': 'held', 'prov:generalEntity': 'set' },
    };
    const generated = (entity: string, day: string) => ({
      'prov:entity': entity,
      'prov:activity': `making of ${entity}`,
      'prov:time': time(day),
    });
    const wasGeneratedBy = {
      '_:1': generated('set', '1960-01-01'),
      '_:2': generated('held', '1959-01-01'),
    };
    expect(brokenOrderings({ specializationOf, wasGeneratedBy })).toContain(45);
  });
});
