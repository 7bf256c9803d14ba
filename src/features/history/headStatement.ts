import { createPublicKey, verify } from 'node:crypto';
import { canonicalJson } from '../../domain/history/canonicalJson.js';

/** A head of the log with the owner's signature, as it is kept, written to a file and printed. */
export interface SignedHead {
  sequence: number;
  entryHash: string;
  signedAt: string;
  /** SPKI in PEM. */
  publicKey: string;
  /** Ed25519 in base64. */
  signature: string;
}

/** What is signed: these bytes and no others. */
export const headStatement = (head: Omit<SignedHead, 'publicKey' | 'signature'>): Buffer =>
  Buffer.from(
    canonicalJson({
      what: 'head of a Reglow log',
      sequence: head.sequence,
      entryHash: head.entryHash,
      signedAt: head.signedAt,
    }),
  );

/** Whether the signature fits; what cannot be read does not. */
export function isSignatureValid(head: SignedHead): boolean {
  try {
    const key = createPublicKey(head.publicKey);
    if (key.asymmetricKeyType !== 'ed25519') return false;
    return verify(null, headStatement(head), key, Buffer.from(head.signature, 'base64'));
  } catch {
    return false;
  }
}
