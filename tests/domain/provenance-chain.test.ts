import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { chainCoverage } from '../../src/domain/provenance/chainCoverage.js';
import type { ChainEvent } from '../../src/domain/provenance/chainEvent.js';
import { holdingOverlaps } from '../../src/domain/provenance/holdingOverlaps.js';
import { holdings } from '../../src/domain/provenance/holdings.js';
import { linkConfidence, type EvidenceWeight } from '../../src/domain/provenance/linkConfidence.js';
import { twoHolders } from '../../src/domain/provenance/twoHolders.js';

type Named = Partial<ChainEvent> & { on?: string };
const event = (eventId: string, { on, ...more }: Named): ChainEvent => ({
  eventId,
  kind: 'TRANSFER',
  earliest: on ?? null,
  latest: on ?? null,
  fromPartyId: null,
  toPartyId: null,
  ...more,
});
const made = event('made', { kind: 'START', on: '1960-01-01', toPartyId: 'maker' });
const sold = event('sold', { on: '1960-12-31', fromPartyId: 'maker', toPartyId: 'Ines' });
const given = event('given', { on: '1970-12-31', fromPartyId: 'Ines', toPartyId: 'Ruben' });

describe('who held a set', () => {
  it('passes from hand to hand, and the last one has it still', () => {
    const held = holdings([given, made, sold]);
    expect(held.map(({ partyId, end }) => [partyId, end])).toEqual([
      ['maker', 'GIVEN_UP'],
      ['Ines', 'GIVEN_UP'],
      ['Ruben', 'STILL_HELD'],
    ]);
    const coverage = chainCoverage(held, '1960-01-01', '1979-12-31');
    expect(coverage).toMatchObject({ certainShare: 1, possibleShare: 1, gaps: [] });
  });

  it('shows a gap where nobody says how it came from one to the other', () => {
    const found = event('resold', { on: '1965-01-01', fromPartyId: 'dealer', toPartyId: 'Tom' });
    const held = holdings([made, sold, found]);
    expect(held.map(({ partyId, end }) => [partyId, end])).toEqual([
      ['maker', 'GIVEN_UP'],
      ['Ines', 'NOT_RECORDED'],
      ['dealer', 'GIVEN_UP'],
      ['Tom', 'STILL_HELD'],
    ]);
    // From 1961-01-01 to 1964-12-31: four years, one of them a leap year.
    expect(chainCoverage(held, '1960-01-01', '1969-12-31')?.gaps).toEqual([
      { from: '1961-01-01', to: '1964-12-31', daysAtLeast: 1461, daysAtMost: 1461 },
    ]);
  });

  it('takes an uncertain date for no gap, and a loss for one', () => {
    const about = { ...sold, earliest: '1960-01-01', latest: '1961-12-31' };
    const loss = event('lost', { kind: 'LOSS', on: '1975-06-30', fromPartyId: 'Ines' });
    const back = event('found', { on: '1976-07-01', toPartyId: 'Ruben' });
    const coverage = chainCoverage(holdings([made, about, loss, back]), '1960-01-01', '1979-12-31');
    expect(coverage?.gaps).toEqual([
      { from: '1975-07-01', to: '1976-06-30', daysAtLeast: 366, daysAtMost: 366 },
    ]);
    expect(coverage?.certainShare).toBeLessThan(coverage?.possibleShare ?? 0);
  });

  it('puts an undated event beside the one that names the same person', () => {
    const undated = event('undated', { fromPartyId: 'Ines', toPartyId: 'Ruben' });
    const later = event('later', { on: '1980-01-01', fromPartyId: 'Ruben', toPartyId: 'Tom' });
    expect(holdings([undated, later, sold, made]).map(({ partyId }) => partyId)).toEqual([
      'maker',
      'Ines',
      'Ruben',
      'Tom',
    ]);
  });

  it('names the events by which two people would have held it at once', () => {
    const between = event('between', { on: '1965-05-01', fromPartyId: 'Olga', toPartyId: 'Tom' });
    expect(twoHolders([made, sold, between, given])[0]).toMatchObject({
      code: 'TWO_HOLDERS',
      eventIds: ['sold', 'between', 'given'],
    });
    expect(twoHolders([made, sold, { ...between, latest: '1975-01-01' }, given])).toEqual([]);
    expect(twoHolders([made, sold, given])).toEqual([]);
  });

  it('names all who would have held it at once, from day to day', () => {
    const held = (partyId: string, from: string, to: string): ChainEvent[] => [
      event(`${partyId} came`, { on: from, toPartyId: partyId }),
      event(`${partyId} went`, { on: to, fromPartyId: partyId }),
    ];
    const chain = [
      ...held('Ines', '1960-01-01', '1970-01-01'),
      ...held('Olga', '1964-01-01', '1966-01-01'),
      ...held('Tom', '1965-01-01', '1968-01-01'),
    ];
    expect(holdingOverlaps(chain)).toEqual([
      { from: '1964-01-01', to: '1965-01-01', partyIds: ['Ines', 'Olga'] },
      { from: '1965-01-01', to: '1966-01-01', partyIds: ['Ines', 'Olga', 'Tom'] },
      { from: '1966-01-01', to: '1968-01-01', partyIds: ['Ines', 'Tom'] },
    ]);
    expect(holdingOverlaps([made, sold, given])).toEqual([]);
  });

  it('never covers more for sure than it may, and gaps and possible days make up the whole', () => {
    const day = fc
      .integer({ min: 0, max: 3000 })
      .map((days) => new Date(Date.UTC(1960, 0, 1 + days)).toISOString().slice(0, 10));
    const party = fc.constantFrom('A', 'B', null);
    const transfers = fc.array(fc.tuple(day, day, party, party), { maxLength: 6 });
    fc.assert(
      fc.property(transfers, (drawn) => {
        const events = drawn.map(([one, other, fromPartyId, toPartyId], index) =>
          event(`e${index}`, {
            earliest: one < other ? one : other,
            latest: one < other ? other : one,
            fromPartyId,
            toPartyId,
          }),
        );
        const coverage = chainCoverage(holdings(events), '1960-01-01', '1969-12-31');
        if (!coverage) throw new Error('There is time to cover.');
        const { certainShare, possibleShare, gaps } = coverage;
        expect(certainShare).toBeLessThanOrEqual(possibleShare);
        const missing = gaps.reduce((sum, { daysAtLeast }) => sum + daysAtLeast, 0);
        expect(possibleShare * 3653 + missing).toBeCloseTo(3653, 6);
        for (const { daysAtLeast, daysAtMost } of gaps)
          expect(daysAtLeast).toBeLessThanOrEqual(daysAtMost);
      }),
      { numRuns: 200 },
    );
  });
});

describe('how far a link can be relied on', () => {
  const piece = (more: Partial<EvidenceWeight>): EvidenceWeight => ({
    bearing: 'SUPPORTS',
    strength: 'MODERATE',
    isStatement: false,
    kind: 'INVOICE',
    ...more,
  });
  it.each([
    ['CLAIMED', []],
    ['CLAIMED', [piece({ isStatement: true, strength: 'STRONG' })]],
    ['WEAKLY_SUPPORTED', [piece({ strength: 'WEAK' }), piece({ strength: 'WEAK', kind: 'LABEL' })]],
    ['SUPPORTED', [piece({}), piece({})]],
    ['WELL_SUPPORTED', [piece({}), piece({ kind: 'LETTER' })]],
    ['WELL_SUPPORTED', [piece({ strength: 'STRONG' })]],
    ['DISPUTED', [piece({}), piece({ bearing: 'CONTRADICTS', strength: 'WEAK' })]],
    ['CONTRADICTED', [piece({}), piece({ bearing: 'CONTRADICTS', strength: 'STRONG' })]],
  ] as const)('%s', (level, evidence) => {
    expect(linkConfidence(evidence).level).toBe(level);
    expect(linkConfidence(evidence).rule).toMatch(/\.$/);
  });
});
