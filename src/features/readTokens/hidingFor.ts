import type { Reader } from '../../db/reader.js';
import { hidingOf, type Hiding } from '../dossier/hidingOf.js';
import { namesOfParty, type NamedParty } from '../parties/namesOfParty.js';
import type { TokenAllowance } from './tokenAllowance.js';

/** Shorter ones are ordinary numbers as well (100 kHz). Our own choice, no source. */
const shortestSerialNumber = 5;

/**
 * Titles and names are written freely and may name what a token does not show: every person, place
 * and serial number on record is taken out of them, and every amount of money.
 */
export async function hidingFor(
  reader: Reader,
  shows: ReadonlySet<TokenAllowance>,
): Promise<Hiding> {
  const words = (await serialNumbers(reader)).filter((each) => each.length >= shortestSerialNumber);
  if (!shows.has('PEOPLE')) words.push(...(await people(reader)));
  if (!shows.has('PLACES')) words.push(...(await places(reader)));
  return hidingOf(words, { isMoneyHidden: !shows.has('MONEY') });
}

async function people(reader: Reader): Promise<string[]> {
  // Who makes sets stands on their fronts.
  const parties = await reader.rows<NamedParty>(
    `SELECT kind AS "kind", name AS "name", contact AS "contact" FROM party
     WHERE NOT EXISTS (SELECT 1 FROM model WHERE model.maker = party.name)`,
  );
  return parties.flatMap(namesOfParty);
}

async function places(reader: Reader): Promise<string[]> {
  const rows = await reader.rows<{ name: string }>(
    `SELECT name AS "name" FROM place
     UNION SELECT place_name AS "name" FROM provenance_event WHERE place_name IS NOT NULL
     UNION SELECT place_name AS "name" FROM loan WHERE place_name IS NOT NULL
     UNION SELECT venue AS "name" FROM acquisition WHERE venue IS NOT NULL
     UNION SELECT venue AS "name" FROM disposal WHERE venue IS NOT NULL`,
  );
  return rows.map(({ name }) => name);
}

async function serialNumbers(reader: Reader): Promise<string[]> {
  const rows = await reader.rows<{ serialNumber: string }>(
    'SELECT serial_number AS "serialNumber" FROM item WHERE serial_number IS NOT NULL',
  );
  return rows.map(({ serialNumber }) => serialNumber);
}
