import type { Reader } from '../../db/reader.js';
import { isSignatureValid, type SignedHead } from '../history/headStatement.js';
import { logHead } from '../history/logHead.js';
import { section, type DossierSection } from './dossierDocument.js';

/** By what a reader can check later that nothing was taken out of the records or put in between. */
export async function logSection(reader: Reader): Promise<DossierSection> {
  const head = await logHead((sql, parameters) => reader.rows(sql, parameters));
  const [signed] = await reader.rows<SignedHead>(
    `SELECT sequence AS "sequence", entry_hash AS "entryHash", signed_at AS "signedAt",
       public_key AS "publicKey", signature AS "signature"
     FROM signed_head ORDER BY sequence DESC, id DESC LIMIT 1`,
  );
  const facts: [string, string][] = [
    ['Entries of the log', String(head.sequence)],
    ['Hash of the last entry', head.entryHash],
  ];
  if (signed) {
    const isValid = isSignatureValid({ ...signed, sequence: Number(signed.sequence) });
    facts.push(
      ['Signed by the owner', `up to entry ${Number(signed.sequence)}, ${signed.signedAt}`],
      ['Hash that was signed', signed.entryHash],
      ['Signature (Ed25519)', isValid ? signed.signature : 'does not fit: do not rely on it'],
      ["Owner's public key", signed.publicKey.replaceAll(/-----[^-]+-----|\s/g, '')],
    );
  }
  return section('How this can be checked', {
    remarks: [
      'Every change of a record is an entry of a log in which each entry covers the hash of the one before it. Whoever keeps this page can ask later that the log still holds this hash: then the records up to here were only added to.',
    ],
    facts,
  });
}
