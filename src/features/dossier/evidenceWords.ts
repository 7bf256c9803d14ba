import type { Reader } from '../../db/reader.js';
import { inWords, withheldWord, type DossierWithholding } from './dossierDocument.js';

interface PieceOfEvidence {
  subjectId: string;
  bearing: string;
  kind: string;
  strength: string;
  description: string;
  keptAt: string | null;
}

type Hide = (word: 'PEOPLE' | 'PLACES', value: string | null) => string;

export const hiderOf =
  (withheld: DossierWithholding['withheld']): Hide =>
  (word, value) =>
    value === null ? '' : withheld.has(word) ? withheldWord : value;

/**
 * The evidence that was brought for events or claims, without what was withdrawn.
 * @param subjects statement with the ids of what it bears on
 */
export const readPieces = (
  reader: Reader,
  subjects: string,
  column: 'event_id' | 'claim_id',
  ...parameters: string[]
): Promise<PieceOfEvidence[]> =>
  reader.rows<PieceOfEvidence>(
    `SELECT ${column} AS "subjectId", bearing AS "bearing", kind AS "kind",
       strength AS "strength", description AS "description", kept_at AS "keptAt"
     FROM evidence WHERE ${column} IN (${subjects}) AND withdrawn_at IS NULL ORDER BY id`,
    parameters,
  );

/** Each piece that bears on one of them, with its bearing, kind and strength. */
export const wordsOfPieces = (
  pieces: readonly PieceOfEvidence[],
  subjectId: string,
  hide: Hide,
): string[] =>
  pieces
    .filter((piece) => piece.subjectId === subjectId)
    .map(({ bearing, kind, strength, description, keptAt }) => {
      const kept = keptAt === null ? '' : `, kept: ${hide('PLACES', keptAt)}`;
      const what = `${inWords(kind)}, ${inWords(strength)}`;
      return `${inWords(bearing)}: ${hide('PEOPLE', description)} (${what}${kept})`;
    });
