import type { Reader } from '../../db/reader.js';
import {
  orUnknown,
  section,
  type DossierSection,
  type DossierWithholding,
} from './dossierDocument.js';
import type { DossierItem } from './dossierItem.js';
import { hiderOf, readPieces, wordsOfPieces } from './evidenceWords.js';

interface Said {
  id: string;
  statement: string;
  saidOn: string | null;
  saidBy: string | null;
}

/** Of the thing itself, and of the lots in which it came. */
const claimsOfItem = `FROM claim WHERE claim.item_id = ? OR (claim.item_id IS NULL AND
  claim.acquisition_id IN (SELECT acquisition_id FROM lot_line WHERE lot_line.item_id = ?))`;

/** What sellers and others said, apart from what is known. */
export async function claimsSection(
  reader: Reader,
  item: DossierItem,
  { withheld }: DossierWithholding,
): Promise<DossierSection> {
  const ids = [item.id, item.id] as const;
  const claims = await reader.rows<Said>(
    `SELECT claim.id AS "id", claim.statement AS "statement", claim.said_on AS "saidOn",
       (SELECT name FROM party WHERE party.id = claim.said_by_id) AS "saidBy"
     ${claimsOfItem} ORDER BY claim.recorded_at, claim.id`,
    [...ids],
  );
  const pieces = await readPieces(reader, `SELECT claim.id ${claimsOfItem}`, 'claim_id', ...ids);
  const hide = hiderOf(withheld);
  const rows = claims.map(({ id, statement, saidOn, saidBy }) => [
    statement,
    hide('PEOPLE', saidBy),
    orUnknown(saidOn),
    wordsOfPieces(pieces, id, hide).join('; '),
  ]);
  return section('What was said of it', {
    remarks: [
      rows.length === 0
        ? 'Nothing that anybody said of it is recorded.'
        : 'Statements are claims until evidence bears on them.',
    ],
    table:
      rows.length === 0 ? null : { columns: ['Statement', 'Said by', 'Said on', 'Evidence'], rows },
  });
}
