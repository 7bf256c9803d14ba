import type { Checklist } from '../../db/checklist.js';
import type { LotClaimInput } from './acquisition.inputs.js';
import type { LotLineDraft } from './lotDraft.js';

const longest = 10_000;

/** What the seller said of the lot or of one line of it, checked. */
export const draftLotClaims = (
  check: Checklist,
  claims: readonly LotClaimInput[],
  lines: readonly LotLineDraft[],
): { line: number | null; statement: string }[] =>
  claims.map((claim, index) => {
    const path = ['claims', String(index)];
    const line = claim.line ?? null;
    const about = line === null ? undefined : lines[line];
    if (line !== null && about === undefined) {
      check.refuse(`There is no line ${line}; the first is line 0.`, [...path, 'line']);
    } else if (about?.sundries) {
      const message = `Line ${line ?? 0} is sundries: leave "line" out, and name them in the statement.`;
      check.refuse(message, [...path, 'line']);
    }
    return { line, statement: check.words(claim.statement, [...path, 'statement'], longest) };
  });
