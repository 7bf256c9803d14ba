import { parseDecimal } from '../decimal/parseDecimal.js';
import { lotWeights, type LotSpread } from './lotWeights.js';
import { weightProblems } from './weightProblems.js';

export interface LotProblem {
  /** Place of the line in the lot, from 0; null when the lot as a whole is at fault. */
  readonly line: number | null;
  /** What of the line is at fault. */
  readonly field: 'statedShare' | 'statedValue' | null;
  readonly message: string;
}

/** What keeps a lot from being spread over its lines; all problems at once, empty if none. */
export function lotProblems(lot: LotSpread): LotProblem[] {
  const { spreadMethod, lines } = lot;
  if (lines.length === 0) {
    return [{ line: null, field: null, message: 'Say what was in the lot: it has no lines.' }];
  }
  if (spreadMethod === 'EQUAL_SHARES') return [];
  const isByShare = spreadMethod === 'STATED_SHARES';
  const field = isByShare ? 'statedShare' : 'statedValue';
  const missing = lines.flatMap((line, index) => {
    const message = isByShare
      ? shareMissing(line.statedShare)
      : line.statedValueMinorUnits === null
        ? 'The lot is spread by stated values: state the value of this line too.'
        : null;
    return message === null ? [] : [{ line: index, field, message } as const];
  });
  if (missing.length > 0) return missing;
  return weightProblems(lotWeights(lot)).map(({ index, message }) => ({
    line: index,
    field: index === null ? null : field,
    message: isByShare ? message : message.replace(/\bshares?\b/gi, inValues),
  }));
}

function shareMissing(share: string | null): string | null {
  if (share === null)
    return 'The lot is spread by stated shares: state the share of this line too.';
  return parseDecimal(share) === null ? `“${share}” is not a share, such as 2 or 0.25.` : null;
}

/** The weights of values are values: say so to the person who stated them. */
function inValues(word: string): string {
  const value = word.toLowerCase() === 'shares' ? 'values' : 'value';
  return word.startsWith('S') ? `V${value.slice(1)}` : value;
}
