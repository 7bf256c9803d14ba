import type { Reader } from '../../db/reader.js';
import { dayOf, inWords, section, type DossierSection } from './dossierDocument.js';
import type { DossierItem } from './dossierItem.js';

/** What inspections found, the worst of what is open first, and what came of it. */
export async function findingsSection(reader: Reader, item: DossierItem): Promise<DossierSection> {
  const findings = await reader.rows<Record<string, string | null>>(
    `SELECT zone AS "zone", severity AS "severity", note AS "note", seen_at AS "seenAt",
       status AS "status", settled_at AS "settledAt", settled_note AS "settlement"
     FROM finding WHERE item_id = ?
     ORDER BY CASE status WHEN 'OPEN' THEN 0 ELSE 1 END,
       CASE severity WHEN 'BLOCKING' THEN 0 WHEN 'MAJOR' THEN 1 ELSE 2 END, seen_at, id`,
    [item.id],
  );
  return section('What was found', {
    remarks: findings.length === 0 ? ['No finding is recorded.'] : [],
    table:
      findings.length === 0
        ? null
        : {
            columns: ['Where', 'How bad', 'What was seen', 'Since', 'What came of it'],
            rows: findings.map((finding) => [
              inWords(finding['zone'] ?? ''),
              inWords(finding['severity'] ?? ''),
              finding['note'] ?? '',
              dayOf(finding['seenAt'] ?? null),
              outcomeOf(finding),
            ]),
          },
  });
}

function outcomeOf({ status, settledAt, settlement }: Record<string, string | null>): string {
  if (status === 'OPEN') return 'open';
  const when = settledAt ? ` (${dayOf(settledAt)})` : '';
  return [`${inWords(status ?? '')}${when}`, settlement].filter(Boolean).join(': ');
}
