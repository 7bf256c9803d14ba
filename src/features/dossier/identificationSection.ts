import type { Reader } from '../../db/reader.js';
import {
  dayOf,
  inWords,
  orUnknown,
  section,
  withheldWord,
  type DossierChoice,
  type DossierSection,
} from './dossierDocument.js';
import type { DossierItem } from './dossierItem.js';

/**
 * The nine categories by which a thing can be known again, in the order of the standard; what is
 * not recorded is said so.
 * Source: Object ID, International Council of Museums (ICOM).
 */
export async function identificationSection(
  reader: Reader,
  item: DossierItem,
  { withheld }: DossierChoice,
): Promise<DossierSection> {
  const findings = await reader.rows<{ note: string; seenAt: string }>(
    `SELECT note AS "note", seen_at AS "seenAt" FROM finding
     WHERE item_id = ? AND status <> 'RESOLVED' ORDER BY seen_at, id`,
    [item.id],
  );
  const serial = withheld.has('SERIAL_NUMBERS') ? withheldWord : orUnknown(item.serialNumber);
  const years = [item.firstYearMade, item.lastYearMade].filter((year) => year !== null);
  const kind = item.kind === 'RIG' ? 'Vacuum-tube radio set' : inWords(item.role ?? 'accessory');
  return section('Identification', {
    remarks: ['By the nine categories of Object ID (International Council of Museums).'],
    facts: [
      ['Type of object', kind],
      ['Materials and techniques', 'not recorded'],
      ['Measurements', 'not recorded'],
      ['Inscriptions and markings', `Serial number: ${serial}`],
      [
        'Distinguishing features',
        findings.length === 0
          ? 'not recorded'
          : findings.map(({ note, seenAt }) => `${note} (${dayOf(seenAt)})`).join('; '),
      ],
      ['Title', orUnknown(item.name ?? item.inventoryNumber)],
      ['Subject', orUnknown(item.description)],
      [
        'Date or period',
        item.madeEdtf ??
          (years.length > 0 ? `model made ${[...new Set(years)].join(' to ')}` : 'not recorded'),
      ],
      ['Maker', orUnknown([item.maker, item.designation].filter(Boolean).join(' '))],
      ['Inventory number', item.inventoryNumber],
      ['Where it stands', withheld.has('PLACES') ? withheldWord : orUnknown(item.placeName)],
    ],
  });
}
