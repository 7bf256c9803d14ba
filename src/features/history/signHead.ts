import { createPublicKey, sign, type KeyObject } from 'node:crypto';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { headStatement, type SignedHead } from './headStatement.js';
import { logHead } from './logHead.js';
import { SignedHeadEntity } from './signedHead.entity.js';

/** Signs the head of the log and keeps the signature; that it was signed is the next entry. */
export async function signHead(work: UnitOfWork, privateKey: KeyObject): Promise<SignedHead> {
  await oneAtATime(work, 'history');
  const head = await logHead((sql, parameters) => queryInWork(work, sql, parameters));
  if (head.sequence === 0) {
    throw Refusal.invalid('Nothing is recorded yet, so that there is nothing to sign.');
  }
  const statement = { ...head, signedAt: work.now };
  const signed = {
    ...statement,
    publicKey: createPublicKey(privateKey).export({ type: 'spki', format: 'pem' }).toString(),
    signature: sign(null, headStatement(statement), privateKey).toString('base64'),
  };
  await insertRow(work, SignedHeadEntity, signed);
  return signed;
}
