import { describe, expect, it } from 'vitest';
import { itemDates, type CodeFact } from '../../src/domain/provenance/itemDates.js';

const code = (id: string, origin: CodeFact['origin'], ...years: number[]): CodeFact => ({
  id,
  words: `The code on ${id}.`,
  origin,
  readings: years.map((year) => ({ earliest: `${year}-05-01`, latest: `${year}-05-07` })),
  fittedBy: '2021-01-01',
});
const facts = { today: '2026-06-01', making: [], events: [], codes: [] };

describe('what the parts of a set say of its dates', () => {
  // Terminus post quem: the latest of securely dated finds bounds the deposit (archaeology's rule).
  it('bounds the making by the latest original part, whatever was replaced', () => {
    const codes = [
      code('C1', 'ORIGINAL', 1961),
      code('C2', 'ORIGINAL', 1963),
      code('C3', 'REPLACEMENT', 1978),
      code('C4', 'UNKNOWN', 1985),
    ];
    const { making, codes: found, conflict } = itemDates({ ...facts, codes });
    expect(conflict).toEqual([]);
    expect(making).toEqual({ earliest: '1963-05-01', latest: '2021-01-01' });
    expect(found[2]?.repair).toEqual({ earliest: '1978-05-01', latest: '2021-01-01' });
    expect(found[0]?.repair).toBeNull();
  });

  it('narrows the decade by a sale: what was sold in 1965 has no original part of 1974', () => {
    const sale = {
      id: 'sale',
      words: 'Sold in 1965.',
      earliest: '1965-01-01',
      latest: '1965-12-31',
    };
    const codes = [code('C1', 'ORIGINAL', 1954, 1964, 1974)];
    const { codes: found } = itemDates({ ...facts, events: [sale], codes });
    expect(found[0]?.possible.map(({ earliest }) => earliest)).toEqual([
      '1954-05-01',
      '1964-05-01',
    ]);
  });

  it('names a statement and the code that it contradicts, and no more', () => {
    const said = {
      id: 'seller',
      words: 'The seller says 1958.',
      earliest: '1958-01-01',
      latest: '1958-12-31',
    };
    const codes = [code('C1', 'ORIGINAL', 1955), code('C2', 'ORIGINAL', 1963)];
    const { making, conflict, codes: found } = itemDates({ ...facts, making: [said], codes });
    expect(making).toBeNull();
    expect(conflict.map(({ words }) => words)).toEqual([
      'The seller says 1958.',
      'The code on C2.',
      'The part is on record as original.',
    ]);
    expect(found[0]?.possible).toEqual([]);
  });
});
