import type { Reader } from '../../db/reader.js';
import {
  dayOf,
  inWords,
  section,
  withheldWord,
  type DossierChoice,
  type DossierSection,
} from './dossierDocument.js';
import type { DossierItem } from './dossierItem.js';

/** What sits in each position, and whether it was there from the start. */
export async function partsSection(
  reader: Reader,
  item: DossierItem,
  { withheld }: DossierChoice,
): Promise<DossierSection> {
  const parts = await reader.rows<Record<string, string | null>>(
    `SELECT fitting.designator AS "designator", part_type.designation AS "type",
       component.marking AS "marking", component.date_code AS "dateCode",
       component.origin AS "origin", fitting.fitted_at AS "fittedAt"
     FROM fitting JOIN component ON component.id = fitting.component_id
     LEFT JOIN part_type ON part_type.id = component.part_type_id
     WHERE fitting.item_id = ? AND fitting.removed_at IS NULL
     ORDER BY fitting.designator, fitting.id`,
    [item.id],
  );
  const rows = parts.map((part) => [
    part['designator'] ?? '',
    part['type'] ?? '',
    withheld.has('SERIAL_NUMBERS') && part['marking'] ? withheldWord : (part['marking'] ?? ''),
    part['dateCode'] ?? '',
    inWords(part['origin'] ?? 'UNKNOWN'),
    part['origin'] === 'ORIGINAL' ? '' : dayOf(part['fittedAt']),
  ]);
  const original = parts.filter(({ origin }) => origin === 'ORIGINAL').length;
  return section('What is original', {
    remarks: [
      rows.length === 0
        ? 'No parts are recorded.'
        : `${original} of ${rows.length} recorded parts are recorded as original.`,
    ],
    table:
      rows.length === 0
        ? null
        : { columns: ['Position', 'Type', 'Marking', 'Date code', 'Origin', 'Fitted'], rows },
  });
}
