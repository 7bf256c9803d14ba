import { compareDecimals } from '../decimal/compareDecimals.js';
import { parseDecimal } from '../decimal/parseDecimal.js';
import type { Limit } from './limit.js';

export interface LimitProblem {
  readonly field: 'lower' | 'upper';
  readonly message: string;
}

/** What must be mended before a limit can judge a reading; empty when nothing must. */
export function limitProblems(limit: Limit): LimitProblem[] {
  const { lower, upper } = limit;
  if (lower === null && upper === null) {
    return [{ field: 'lower', message: 'Give a lower or an upper end, or both.' }];
  }
  const unreadable = (['lower', 'upper'] as const).flatMap((field) => {
    const text = limit[field];
    return text === null || parseDecimal(text) !== null
      ? []
      : [{ field, message: `“${text}” is not a decimal number such as 0.30.` }];
  });
  if (unreadable.length > 0) return unreadable;
  if (lower !== null && upper !== null && compareDecimals(lower, upper) > 0) {
    return [
      { field: 'lower', message: `The lower end ${lower} lies above the upper end ${upper}.` },
    ];
  }
  return [];
}
