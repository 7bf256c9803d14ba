import { splitGlobalId } from '../../api/kit/globalId.js';
import type { Reads } from '../../api/kit/typeReads.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { isOpenField } from './fieldSalt.js';
import { readEntries, type KeptEntry } from './readEntries.js';
import type { RedactHistoryInput } from './redaction.inputs.js';
import { takeOutValues } from './takeOutValues.js';

/**
 * Takes what somebody wrote in some fields of a record out of every entry of the log. The salted
 * hash of each value stays, so that the chain still holds; the value and its salt do not. The
 * record itself must say something else already: that is what its change mutation is for.
 * @returns how many entries lost something
 */
export async function redactHistory(
  work: UnitOfWork,
  input: RedactHistoryInput,
  reads: Reads,
): Promise<number> {
  const subject = splitGlobalId(input.recordId);
  const table = subject === null ? undefined : reads.get(subject.typeName)?.table;
  if (!subject || table === undefined) {
    throw Refusal.invalid('This is not the id of a record. Use the id that the API gave for it.', [
      'recordId',
    ]);
  }
  const check = new Checklist(work);
  const reason = check.words(input.reason, ['reason'], 1000);
  check.that(input.fields.length > 0, 'Name a field at least.', ['fields']);
  await oneAtATime(work, 'history');
  const entries = await readEntries(
    (sql, parameters) => queryInWork(work, sql, parameters),
    'WHERE record_table = ? AND record_id = ? ORDER BY sequence',
    [table, subject.id],
  );
  input.fields.forEach((field, index) => {
    const path = ['fields', String(index)];
    const isKnown = entries.some(({ after }) => after !== null && field in after);
    check.that(isKnown, `The log knows no field “${field}” of this record.`, path);
    check.that(!isOpenField(field), 'Ids, instants and versions name nobody and stay.', path);
    check.that(
      !stillSays(entries, field),
      `The record says in “${field}” still, or again, what it said before. Change it to something else first, then redact.`,
      path,
    );
  });
  check.done();
  let count = 0;
  for (const entry of entries) {
    const changed = takeOutValues(entry, input.fields);
    if (changed === null) continue;
    count++;
    await queryInWork(
      work,
      `UPDATE change SET "before" = ?, "after" = ?, salt = NULL, redacted = ? WHERE id = ?`,
      [text(changed.before), text(changed.after), text(changed.redacted), entry.id],
    );
  }
  work.writes.push({
    table: 'change',
    recordId: subject.id,
    before: null,
    after: { redactedTable: table, redactedFields: input.fields, entries: count, reason },
  });
  return count;
}

/**
 * What the record says now must have taken the place of something that the log said before, and must
 * be none of it: where a name was put back, taking it out of the log would leave it in the record.
 */
function stillSays(entries: readonly KeptEntry[], field: string): boolean {
  const values = entries.flatMap(({ after }) => (after && field in after ? [after[field]] : []));
  const now = values.at(-1);
  if (now === null || now === undefined) return false;
  const replaced = values.slice(0, values.findLastIndex((value) => value !== now) + 1);
  return replaced.length === 0 || replaced.includes(now);
}

const text = (value: unknown): string | null => (value === null ? null : JSON.stringify(value));
