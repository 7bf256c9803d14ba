import type { Reader } from '../../db/reader.js';
import {
  inWords,
  orUnknown,
  section,
  withheldWord,
  type DossierSection,
  type DossierWithholding,
} from './dossierDocument.js';
import type { DossierItem } from './dossierItem.js';

interface ReportedLoss {
  kind: string;
  missedOn: string;
  circumstances: string | null;
  reportedTo: string | null;
  reportNumber: string | null;
}

/** How it went missing and to whom that was reported, for the police, customs and insurers. */
export async function lossSection(
  reader: Reader,
  item: DossierItem,
  { withheld }: DossierWithholding,
): Promise<DossierSection> {
  const [loss] = await reader.rows<ReportedLoss>(
    `SELECT kind AS "kind", missed_on AS "missedOn", circumstances AS "circumstances",
       reported_to AS "reportedTo", report_number AS "reportNumber"
     FROM item_loss WHERE item_id = ? AND found_on IS NULL`,
    [item.id],
  );
  if (!loss) return section('Whether it is missing', { remarks: ['No loss of it is on record.'] });
  const { kind, missedOn, circumstances, reportedTo, reportNumber } = loss;
  return section('Missing', {
    facts: [
      ['What happened', inWords(kind)],
      ['Missed on', missedOn],
      [
        'Circumstances',
        circumstances !== null && withheld.has('PEOPLE') ? withheldWord : orUnknown(circumstances),
      ],
      ['Reported to', orUnknown(reportedTo)],
      ['Number of the report', orUnknown(reportNumber)],
    ],
  });
}
