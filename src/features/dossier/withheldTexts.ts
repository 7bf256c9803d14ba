import type { Reader } from '../../db/reader.js';
import { namesOfParty, type NamedParty } from '../parties/namesOfParty.js';
import type { DossierWithholding } from './dossierDocument.js';
import type { DossierItem } from './dossierItem.js';
import { hidingOf, type Hiding } from './hidingOf.js';

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
  return hidingOf(words, { isMoneyHidden: withheld.has('PRICES') });
}

async function namesOfPeople(reader: Reader, { maker }: DossierItem): Promise<string[]> {
  const parties = await reader.rows<NamedParty>(
    'SELECT kind AS "kind", name AS "name", contact AS "contact" FROM party',
  );
  // Who made it stands on its front.
  return parties.flatMap((party) => (party.name === maker ? [] : namesOfParty(party)));
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
