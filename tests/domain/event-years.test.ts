import { describe, expect, it } from 'vitest';
import { eventYears } from '../../src/domain/provenance/eventYears.js';

const event = (eventId: string, earliest: string | null, latest: string | null) => ({
  eventId,
  earliest,
  latest,
});

describe('provenance events against the first year made', () => {
  it('finds a sale that surely came before the model', () => {
    const sale = event('sale', '1951-01-01', '1953-12-31');
    expect(eventYears([sale], 1954)).toEqual([
      {
        code: 'BEFORE_FIRST_YEAR_MADE',
        message:
          'This event ended by 1953-12-31, but the model was first made in 1954: the date, the model or the identity of the set is mistaken.',
        eventIds: ['sale'],
      },
    ]);
  });

  it('says nothing of what only may have been too early', () => {
    expect(eventYears([event('sale', '1950-01-01', '1954-01-01')], 1954)).toEqual([]);
    expect(eventYears([event('sale', '1950-01-01', null)], 1954)).toEqual([]);
    expect(eventYears([event('sale', null, null)], 1954)).toEqual([]);
  });

  it('says nothing where the first year made is not recorded', () => {
    expect(eventYears([event('sale', '1901-01-01', '1901-12-31')], null)).toEqual([]);
  });

  it('compares years as numbers, before year 0 and past 9999 too', () => {
    expect(eventYears([event('typing slip', '-0195-01-01', '-0195-12-31')], 1954)).toHaveLength(1);
    expect(eventYears([event('typing slip', '19560-01-01', '19560-12-31')], 1954)).toEqual([]);
  });
});
