import type { Reader } from '../../db/reader.js';
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

interface PieceOfEvidence {
  eventId: string;
  bearing: string;
  kind: string;
  strength: string;
  description: string;
  keptAt: string | null;
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
  const pieces = await reader.rows<PieceOfEvidence>(
    `SELECT evidence.event_id AS "eventId", evidence.bearing AS "bearing",
       evidence.kind AS "kind", evidence.strength AS "strength",
       evidence.description AS "description", evidence.kept_at AS "keptAt"
     FROM evidence JOIN provenance_event AS event ON event.id = evidence.event_id
     WHERE event.item_id = ? AND evidence.withdrawn_at IS NULL ORDER BY evidence.id`,
    [item.id],
  );
  const hide = (word: 'PEOPLE' | 'PLACES', value: string | null): string =>
    value === null ? '' : withheld.has(word) ? withheldWord : value;
  const evidenceOf = ({ id, evidence }: PastEvent): string =>
    [
      hide('PEOPLE', evidence),
      ...pieces
        .filter(({ eventId }) => eventId === id)
        .map(({ bearing, kind, strength, description, keptAt }) => {
          const kept = keptAt === null ? '' : `, kept: ${hide('PLACES', keptAt)}`;
          const what = `${inWords(kind)}, ${inWords(strength)}`;
          return `${inWords(bearing)}: ${hide('PEOPLE', description)} (${what}${kept})`;
        }),
    ]
      .filter(Boolean)
      .join('; ');
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
