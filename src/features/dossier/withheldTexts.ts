import type { Reader } from '../../db/reader.js';
import { withheldWord, type DossierWithholding } from './dossierDocument.js';
import type { DossierItem } from './dossierItem.js';

/** Takes what is withheld out of what somebody wrote. */
export type Hiding = (text: string) => string;

const shortestName = 3;

/**
 * Remarks are written freely and may name what is to be withheld: every name, place, serial number
 * and amount of money that is on record is taken out of them, wherever it stands.
 */
export async function withheldTexts(
  reader: Reader,
  item: DossierItem,
  { withheld }: DossierWithholding,
): Promise<Hiding> {
  const words: string[] = [];
  if (withheld.has('PEOPLE')) words.push(...(await namesOfPeople(reader, item)));
  if (withheld.has('PLACES')) words.push(...(await namesOfPlaces(reader, item)));
  if (withheld.has('SERIAL_NUMBERS')) words.push(...(await numbersOnParts(reader, item)));
  const patterns = [
    ...(words.length > 0 ? [anyOf(words)] : []),
    ...(withheld.has('PRICES') ? [amountsOfMoney] : []),
  ];
  return (text) => patterns.reduce((left, pattern) => left.replaceAll(pattern, withheldWord), text);
}

async function namesOfPeople(reader: Reader, { maker }: DossierItem): Promise<string[]> {
  const parties = await reader.rows<{ kind: string; name: string; contact: string | null }>(
    'SELECT kind AS "kind", name AS "name", contact AS "contact" FROM party',
  );
  return parties.flatMap(({ kind, name, contact }) => {
    // Who made it stands on its front.
    if (name === maker) return [];
    // A person is called by one of the names as well.
    const parts =
      kind === 'PERSON' ? name.split(/[\s,]+/).filter((part) => /^\p{Lu}/u.test(part)) : [];
    return [name, ...parts, ...(contact === null ? [] : [contact])];
  });
}

async function namesOfPlaces(reader: Reader, { id }: DossierItem): Promise<string[]> {
  const rows = await reader.rows<{ name: string }>(
    `SELECT name AS "name" FROM place
     UNION SELECT place_name AS "name" FROM provenance_event
       WHERE item_id = ? AND place_name IS NOT NULL
     UNION SELECT place_name AS "name" FROM loan WHERE item_id = ? AND place_name IS NOT NULL
     UNION SELECT lot.venue AS "name" FROM acquisition AS lot
       JOIN lot_line ON lot_line.acquisition_id = lot.id
       WHERE lot_line.item_id = ? AND lot.venue IS NOT NULL`,
    [id, id, id],
  );
  return rows.map(({ name }) => name);
}

async function numbersOnParts(reader: Reader, item: DossierItem): Promise<string[]> {
  const rows = await reader.rows<{ marking: string }>(
    `SELECT DISTINCT component.marking AS "marking" FROM component
     JOIN fitting ON fitting.component_id = component.id
     WHERE fitting.item_id = ? AND component.marking IS NOT NULL`,
    [item.id],
  );
  return [
    ...(item.serialNumber === null ? [] : [item.serialNumber]),
    ...rows.map(({ marking }) => marking),
  ];
}

/** Whole words only; the longest first, so that no half of one is left. */
function anyOf(words: readonly string[]): RegExp {
  const parts = [...new Set(words)]
    .filter((word) => word.length >= shortestName)
    .sort((one, other) => other.length - one.length || (one < other ? -1 : 1))
    .map((word) => word.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&').replaceAll(/\s+/g, '\\s+'));
  return parts.length === 0
    ? /(?!)/g
    : new RegExp(`(?<![\\p{L}\\p{N}])(?:${parts.join('|')})(?![\\p{L}\\p{N}])`, 'gu');
}

const amount = String.raw`\d[\d.,']*`;
const unit = String.raw`(?:[$£€¥]|\b(?:${Intl.supportedValuesOf('currency').join('|')})\b)`;
const wordUnit = String.raw`(?:euros?|pounds?|dollars?|francs?|crowns?|quid)\b`;
const amountsOfMoney = new RegExp(
  `${unit}\\s?${amount}|${amount}\\s?(?:${unit}|${wordUnit})`,
  'giu',
);
