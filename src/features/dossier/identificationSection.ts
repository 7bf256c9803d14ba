import type { Reader } from '../../db/reader.js';
import type { ObjectIdAnswer } from '../../domain/provenance/objectIdOf.js';
import { readObjectIds } from '../objectId/readObjectIds.js';
import {
  inWords,
  orUnknown,
  section,
  withheldWord,
  type DossierSection,
  type DossierWithholding,
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
  { withheld }: DossierWithholding,
): Promise<DossierSection> {
  const sheet = (await readObjectIds(reader, [item.id])).get(item.id);
  if (!sheet) throw new Error(`item ${item.id} was read and is not there`);
  const answered = (one: ObjectIdAnswer): string => {
    if (one.category === 'INSCRIPTIONS_AND_MARKINGS' && withheld.has('SERIAL_NUMBERS')) {
      return withheldWord;
    }
    return one.source === 'NOT_APPLICABLE' ? 'does not apply' : orUnknown(one.answer);
  };
  const ofPlace = (value: string | null): string =>
    withheld.has('PLACES') ? withheldWord : orUnknown(value);
  return section('Identification', {
    remarks: ['By the nine categories of Object ID (International Council of Museums).'],
    facts: [
      ...sheet.answers.map((one): [string, string] => [headingOf(one.category), answered(one)]),
      ['Inventory number', item.inventoryNumber],
      ['Place of origin', ofPlace(sheet.placeOfOrigin)],
      ['Description', orUnknown(sheet.description ?? item.description)],
      ['Related papers', withheld.has('PEOPLE') ? withheldWord : orUnknown(sheet.relatedPapers)],
      ['Where it stands', ofPlace(item.placeName)],
    ],
  });
}

/** MATERIALS_AND_TECHNIQUES → "Materials and techniques". */
function headingOf(category: string): string {
  const words = inWords(category);
  return words.charAt(0).toUpperCase() + words.slice(1);
}
