import type { Reader } from '../../db/reader.js';
import { hiderOf, readPieces, wordsOfPieces } from './evidenceWords.js';
import { linkWords } from './linkWords.js';
import {
  inWords,
  orUnknown,
  section,
  withheldWord,
  type DossierSection,
  type DossierWithholding,
} from './dossierDocument.js';
import type { DossierItem } from './dossierItem.js';
import { pricePaid } from './pricePaid.js';

interface PastEvent {
  id: string;
  kind: string;
  dateEdtf: string | null;
  fromName: string | null;
  toName: string | null;
  placeName: string | null;
  standing: string;
  evidence: string | null;
}

/** What happened to the thing, oldest first, with what it rests on. */
export async function pastSection(
  reader: Reader,
  item: DossierItem,
  { withheld }: DossierWithholding,
): Promise<DossierSection> {
  const events = await reader.rows<PastEvent>(
    `SELECT event.id AS "id", event.kind AS "kind", event.date_edtf AS "dateEdtf",
       giver.name AS "fromName", taker.name AS "toName", event.place_name AS "placeName",
       event.standing AS "standing", event.evidence AS "evidence"
     FROM provenance_event AS event
     LEFT JOIN party AS giver ON giver.id = event.from_party_id
     LEFT JOIN party AS taker ON taker.id = event.to_party_id
     WHERE event.item_id = ?
     ORDER BY CASE WHEN event.earliest_on IS NULL THEN 1 ELSE 0 END, event.earliest_on, event.id`,
    [item.id],
  );
  const pieces = await readPieces(
    reader,
    `SELECT id FROM provenance_event WHERE item_id = ?`,
    'event_id',
    item.id,
  );
  const hide = hiderOf(withheld);
  const evidenceOf = ({ id, evidence }: PastEvent): string =>
    [hide('PEOPLE', evidence), ...wordsOfPieces(pieces, id, hide)].filter(Boolean).join('; ');
  const rows = events.map((event) => [
    orUnknown(event.dateEdtf),
    inWords(event.kind),
    linkWords(hide('PEOPLE', event.fromName), hide('PEOPLE', event.toName)),
    hide('PLACES', event.placeName),
    inWords(event.standing),
    evidenceOf(event),
  ]);
  const price = await pricePaid(reader, item.id);
  return section('Where it came from', {
    remarks: [
      events.length === 0
        ? 'Nothing is recorded of its past.'
        : 'A claim is what somebody said; supported and contradicted mean that evidence was found. Dates are written in EDTF (ISO 8601-2).',
    ],
    facts: [['Price paid', withheld.has('PRICES') ? withheldWord : price]],
    table:
      rows.length === 0
        ? null
        : { columns: ['Date', 'What', 'Between', 'Place', 'Standing', 'Evidence'], rows },
  });
}
