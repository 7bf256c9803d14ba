import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import type { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { PartyEntity } from './party.entity.js';
import type { PartyChoiceInput } from './partyChoice.inputs.js';

/** Writes down the party if it is new. @returns its id; null where nobody was named. */
type KeepParty = () => Promise<string | null>;

/**
 * A known party, or a new one named in passing. What is wrong goes to the checklist; nothing is
 * written before the returned function is called, so that it may follow `check.done()`.
 */
export async function chooseParty(
  work: UnitOfWork,
  check: Checklist,
  choice: PartyChoiceInput | null | undefined,
  path: string[],
): Promise<KeepParty> {
  const nobody: KeepParty = () => Promise.resolve(null);
  if (!choice) return nobody;
  const { id, name, kind } = choice;
  if ((typeof id === 'string') === (typeof name === 'string')) {
    check.refuse('Give the id of a known party or the name of a new one: one of the two.', path);
    return nobody;
  }
  if (typeof id === 'string') {
    const known = checkedRecordId(check, 'Party', id, [...path, 'id']);
    await check.exists('party', known, [...path, 'id']);
    return () => Promise.resolve(known);
  }
  const words = check.words(name ?? '', [...path, 'name']);
  const twins = await queryInWork(
    work,
    `SELECT 1 AS "one" FROM party WHERE name = ? AND retired_at IS NULL`,
    [words],
  );
  if (twins.length > 0) {
    const message = `“${words}” is written down already: send the id, or tell the two apart by name.`;
    check.add({ code: 'CONFLICT', message, path: [...path, 'name'] });
  }
  return async () => {
    const values = { kind, name: words, contact: null, note: null, retiredAt: null };
    return (await insertRow(work, PartyEntity, values)).id;
  };
}
