import type { Reader } from '../../db/reader.js';
import { dayOf, inWords, section, type DossierSection } from './dossierDocument.js';
import type { DossierItem } from './dossierItem.js';

/** What can hurt, and what was done about it. */
export async function hazardSection(reader: Reader, item: DossierItem): Promise<DossierSection> {
  const hazards = await reader.rows<Record<string, string | null>>(
    `SELECT kind AS "kind", note AS "note", raised_at AS "raisedAt", cleared_at AS "clearedAt",
       cleared_by_check AS "check" FROM hazard WHERE item_id = ? ORDER BY raised_at, id`,
    [item.id],
  );
  return section('Hazards', {
    remarks: [
      'Old tube equipment holds lethal voltages, also when switched off and unplugged. What is not listed here may be there all the same. Local codes and qualified practice come first.',
      ...(hazards.length === 0 ? ['No hazard is recorded.'] : []),
    ],
    table:
      hazards.length === 0
        ? null
        : {
            columns: ['Hazard', 'Remark', 'Since', 'How it was dealt with'],
            rows: hazards.map(({ kind, note, raisedAt, clearedAt, check }) => [
              inWords(kind),
              note ?? '',
              dayOf(raisedAt),
              clearedAt === null ? 'stands' : `${check ?? ''} (${dayOf(clearedAt)})`,
            ]),
          },
  });
}
