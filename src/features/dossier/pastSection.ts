import type { Reader } from '../../db/reader.js';
import { formatAmount } from '../../domain/money/formatAmount.js';
import { currencyExponent } from '../money/currencyExponent.js';
import {
  inWords,
  orUnknown,
  section,
  withheldWord,
  type DossierChoice,
  type DossierSection,
} from './dossierDocument.js';
import type { DossierItem } from './dossierItem.js';

interface PastEvent {
  kind: string;
  dateEdtf: string | null;
  earliestOn: string | null;
  latestOn: string | null;
  fromName: string | null;
  toName: string | null;
  placeName: string | null;
  standing: string;
  evidence: string | null;
}

/** What happened to the thing, oldest first; years of which nothing is known are rows as well. */
export async function pastSection(
  reader: Reader,
  item: DossierItem,
  { withheld }: DossierChoice,
): Promise<DossierSection> {
  const events = await reader.rows<PastEvent>(
    `SELECT event.kind AS "kind", event.date_edtf AS "dateEdtf",
       event.earliest_on AS "earliestOn", event.latest_on AS "latestOn",
       giver.name AS "fromName", taker.name AS "toName", event.place_name AS "placeName",
       event.standing AS "standing", event.evidence AS "evidence"
     FROM provenance_event AS event
     LEFT JOIN party AS giver ON giver.id = event.from_party_id
     LEFT JOIN party AS taker ON taker.id = event.to_party_id
     WHERE event.item_id = ?
     ORDER BY CASE WHEN event.earliest_on IS NULL THEN 1 ELSE 0 END, event.earliest_on, event.id`,
    [item.id],
  );
  const hide = (word: 'PEOPLE' | 'PLACES', value: string | null): string =>
    value === null ? '' : withheld.has(word) ? withheldWord : value;
  const rows = events.flatMap((event, index) => [
    ...gapBefore(events[index - 1], event),
    [
      orUnknown(event.dateEdtf),
      inWords(event.kind),
      hide('PEOPLE', event.fromName),
      hide('PEOPLE', event.toName),
      hide('PLACES', event.placeName),
      inWords(event.standing),
      hide('PEOPLE', event.evidence),
    ],
  ]);
  const price = await pricePaid(reader, item.id);
  return section('Where it came from', {
    remarks: [
      events.length === 0
        ? 'Nothing is recorded of its past.'
        : 'A claim is what somebody said; supported and contradicted mean that evidence was found. A gap is a year or more between what is recorded.',
    ],
    facts: [['Price paid', withheld.has('PRICES') ? withheldWord : price]],
    table:
      rows.length === 0
        ? null
        : { columns: ['Date', 'What', 'From', 'To', 'Place', 'Standing', 'Evidence'], rows },
  });
}

const dayMs = 86_400_000;
const daysOfYear = 365;

function gapBefore(last: PastEvent | undefined, next: PastEvent): string[][] {
  if (!last?.latestOn || !next.earliestOn) return [];
  const days = (Date.parse(next.earliestOn) - Date.parse(last.latestOn)) / dayMs;
  if (!(days > daysOfYear)) return [];
  const years = Math.floor(days / 365.2425);
  const span = `${last.latestOn.slice(0, 4)} to ${next.earliestOn.slice(0, 4)}`;
  const length = years === 1 ? 'about one year' : `about ${Math.max(years, 1)} years`;
  return [[span, `gap: nothing is known (${length})`, '', '', '', '', '']];
}

async function pricePaid(reader: Reader, itemId: string): Promise<string> {
  const [lot] = await reader.rows<{
    minorUnits: number;
    currency: string;
    acquiredOn: string;
    things: number;
  }>(
    `SELECT lot.price_minor_units AS "minorUnits", lot.currency AS "currency",
       lot.acquired_on AS "acquiredOn",
       (SELECT COUNT(*) FROM lot_line AS other WHERE other.acquisition_id = lot.id) AS "things"
     FROM lot_line JOIN acquisition AS lot ON lot.id = lot_line.acquisition_id
     WHERE lot_line.item_id = ? ORDER BY lot.acquired_on LIMIT 1`,
    [itemId],
  );
  if (!lot) return 'not recorded';
  const { minorUnits, currency, acquiredOn, things } = lot;
  const amount = formatAmount(Number(minorUnits), currencyExponent(currency) ?? 2);
  const lotOf = Number(things) > 1 ? `, for a lot of ${Number(things)} things` : '';
  return `${amount} ${currency} on ${acquiredOn}${lotOf}`;
}
