import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { drawToken } from './drawToken.js';
import { ReadTokenEntity } from './readToken.entity.js';
import type { MakeReadTokenInput } from './readToken.inputs.js';
import { ReadTokenProofEntity } from './readTokenProof.entity.js';

export interface MadeToken {
  id: string;
  /** The token itself: it cannot be read again. */
  text: string;
}

/** Makes a token that opens what is named and nothing else. */
export async function makeReadToken(
  work: UnitOfWork,
  input: MakeReadTokenInput,
): Promise<MadeToken> {
  const check = new Checklist(work);
  const name = check.words(input.name, ['name']);
  const scopes = [...new Set(input.scopes)].sort();
  check.that(scopes.length > 0, 'Name at least one way out that it is to open.', ['scopes']);
  const lastDay = input.lastDay ?? null;
  check.that(
    lastDay === null || lastDay >= work.now.slice(0, 10),
    'This day is over: the token would open nothing. Name a later day, or none.',
    ['lastDay'],
  );
  check.done();
  const { text, handle, digest } = drawToken();
  const shows = [...new Set(input.shows ?? [])].sort();
  const row = { name, scopes, shows, lastDay, takenBackAt: null };
  const { id } = await insertRow(work, ReadTokenEntity, row);
  await work.manager.insert(ReadTokenProofEntity, { id, handle, digest, lastUsedOn: null });
  return { id, text };
}
