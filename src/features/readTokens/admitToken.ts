import { timingSafeEqual } from 'node:crypto';
import type { Database } from '../../db/database.js';
import { queryInWork } from '../../db/queryInWork.js';
import { handleOfToken, tokenDigest } from './drawToken.js';
import type { TokenAllowance } from './tokenAllowance.js';
import type { TokenScope } from './tokenScope.js';

/** What a request may read. */
export interface Admission {
  shows: ReadonlySet<TokenAllowance>;
}

/** Why it may not: 401 whoever it is, 403 known but not for this. */
export interface TurnedAway {
  status: 401 | 403;
  /** The codes of RFC 6750, section 3.1. */
  code: 'invalid_token' | 'insufficient_scope';
  reason: string;
}

interface KeptToken {
  id: string;
  digest: string;
  scopes: string;
  shows: string;
  lastDay: string | null;
  takenBackAt: string | null;
  lastUsedOn: string | null;
}

/** Compared when no token has the handle, so that this takes as long as any other refusal. */
const digestOfNothing = '0'.repeat(64);

/** Whether a token opens a way out now; notes the day of its use. */
export async function admitToken(
  database: Database,
  text: string,
  scope: TokenScope,
  nowMs: number,
): Promise<Admission | TurnedAway> {
  const handle = handleOfToken(text);
  const kept = handle === null ? null : await tokenOf(database, handle);
  const isProven = isSame(tokenDigest(text), kept?.digest ?? digestOfNothing);
  if (!kept || !isProven) return invalid('No such token is known here. Check that it is whole.');
  const today = new Date(nowMs).toISOString().slice(0, 10);
  if (kept.takenBackAt !== null) {
    return invalid(`This token was taken back on ${kept.takenBackAt.slice(0, 10)}. Make another.`);
  }
  if (kept.lastDay !== null && kept.lastDay < today) {
    return invalid(`The last day of this token was ${kept.lastDay}. Make another.`);
  }
  const scopes = JSON.parse(kept.scopes) as TokenScope[];
  if (!scopes.includes(scope)) {
    const words = scopes.join(', ');
    return notForThis(`This token opens ${words}; this way out wants ${scope}. Make one for it.`);
  }
  if (kept.lastUsedOn === null || kept.lastUsedOn < today) await noteUse(database, kept.id, today);
  return { shows: new Set(JSON.parse(kept.shows) as TokenAllowance[]) };
}

const invalid = (reason: string): TurnedAway => ({ status: 401, code: 'invalid_token', reason });

export const notForThis = (reason: string): TurnedAway => ({
  status: 403,
  code: 'insufficient_scope',
  reason,
});

const isSame = (left: string, right: string): boolean =>
  timingSafeEqual(Buffer.from(left, 'hex'), Buffer.from(right, 'hex'));

async function tokenOf({ reader }: Database, handle: string): Promise<KeptToken | null> {
  const [kept] = await reader.rows<KeptToken>(
    `SELECT read_token.id AS "id", proof.digest AS "digest", read_token.scopes AS "scopes",
       read_token.shows AS "shows", read_token.last_day AS "lastDay",
       read_token.taken_back_at AS "takenBackAt", proof.last_used_on AS "lastUsedOn"
     FROM read_token_proof AS proof JOIN read_token ON read_token.id = proof.id
     WHERE proof.handle = ?`,
    [handle],
  );
  return kept ?? null;
}

/** Once a day at the most, and not in the history: reading changes no record. */
async function noteUse(database: Database, id: string, today: string): Promise<void> {
  const act = { action: 'noteTokenUse', actorId: null, now: `${today}T00:00:00.000Z` };
  await database.write(act, async (work) => {
    await queryInWork(
      work,
      `UPDATE read_token_proof SET last_used_on = ?
       WHERE id = ? AND (last_used_on IS NULL OR last_used_on < ?)`,
      [today, id, today],
    );
  });
}
