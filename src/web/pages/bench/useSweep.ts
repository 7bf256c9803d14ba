import { newKey } from '../../api/newKey.js';
import { useSend, type ShownProblem } from '../../api/useSend.js';
import type { Draft } from '../../drafts/useDraft.js';
import { RecordSweepDocument } from '../../gql/graphql.js';
import { gravestVerdict } from './gravestVerdict.js';
import { sentColumns, valuesOf, type SweepDraft } from './sweepDraft.js';
import { typedNumber } from '../../locale/typedNumber.js';

export interface SweptCount {
  kept: number;
  refused: number;
  /** Positions of the template that nothing was read of yet. */
  left: string[];
}

/**
 * Sends the rows taken so far. What is kept moves on; what is refused stays as a row, with what is
 * to be mended. Sent again after a lost answer, the same key keeps it from being kept twice.
 */
export function useSweep(itemId: string, { draft, change }: Draft<SweepDraft>) {
  const { send, problems, isSending } = useSend(RecordSweepDocument, (data) => data.recordSweep);
  const sweep = async (): Promise<SweptCount | null> => {
    const { key, tier, fitsExpected, rows, templateId } = draft;
    const answer = await send({
      input: {
        key,
        itemId,
        tier,
        fitsExpected,
        instrument: draft.instrument.trim() || null,
        templateId: templateId || null,
        quantities: sentColumns(draft),
        rows: rows.map((row) => ({
          designator: row.designator,
          values: valuesOf(row, draft).map((value) =>
            value.trim() === '' ? null : (typedNumber(value) ?? value),
          ),
        })),
      },
    });
    if (!answer?.sweep) return null;
    const said = answer.sweep.rows;
    const refused = rows.flatMap((row, index) => {
      const messages = (said[index]?.problems ?? []).map(({ message }) => message);
      return messages.length > 0 ? [{ ...row, said: messages }] : [];
    });
    const kept = rows.flatMap((row, index) => {
      const words = (said[index]?.readings ?? []).map(({ verdict }) => verdict.word);
      const word = gravestVerdict(words);
      const value = valuesOf(row, draft).join(' · ');
      return word ? [{ designator: row.designator, value, word }] : [];
    });
    change({ key: newKey(), rows: refused, kept: [...draft.kept, ...kept] });
    const earlier = new Set(draft.kept.map(({ designator }) => designator));
    const left = answer.sweep.positionsLeft.filter((designator) => !earlier.has(designator));
    return { kept: kept.length, refused: refused.length, left };
  };
  return { sweep, problems, isSending, ofRow: (index: number) => rowProblems(problems, index) };
}

/** When every row is refused the whole sweep is: each problem names its row. */
const rowProblems = (problems: readonly ShownProblem[], index: number): string[] =>
  problems
    .filter(({ path }) => path[0] === 'rows' && path[1] === String(index))
    .map(({ message }) => message);
