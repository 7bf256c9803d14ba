import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import {
  linkConfidence,
  type EvidenceWeight,
  type LinkConfidence,
} from '../../domain/provenance/linkConfidence.js';
import type { EvidenceKind } from './evidence.words.js';
import type { EvidenceStanding } from './evidenceStanding.js';

interface WeightRow {
  parentId: string;
  bearing: EvidenceWeight['bearing'];
  strength: EvidenceWeight['strength'];
  kind: EvidenceKind;
}

export interface CountedConfidence extends LinkConfidence {
  evidenceCount: number;
}

/** How far each event or claim can be relied on. Evidence that was withdrawn does not count. */
export async function readConfidences(
  { rows, dialect }: RowSource,
  parentColumn: 'event_id' | 'claim_id',
  ids: readonly string[],
): Promise<Map<string, CountedConfidence>> {
  const pieces = await rows<WeightRow>(
    `SELECT ${parentColumn} AS "parentId", bearing AS "bearing", strength AS "strength",
       kind AS "kind"
     FROM evidence WHERE withdrawn_at IS NULL AND ${dialect.isAnyOf(parentColumn)}`,
    [listParameter(ids)],
  );
  const named =
    parentColumn === 'claim_id'
      ? []
      : await rows<{ id: string; standing: EvidenceStanding }>(
          `SELECT id AS "id", standing AS "standing" FROM provenance_event
           WHERE standing <> 'CLAIM' AND ${dialect.isAnyOf('id')}`,
          [listParameter(ids)],
        );
  const piecesOf = groupedBy(pieces, ({ parentId }) => parentId);
  const standingOf = new Map(named.map(({ id, standing }) => [id, standing]));
  return new Map(
    ids.map((id) => {
      const weights = [
        ...(piecesOf.get(id) ?? []).map((piece) => ({
          ...piece,
          isStatement: piece.kind === 'STATEMENT',
        })),
        ...namedEvidence(standingOf.get(id)),
      ];
      return [id, { ...linkConfidence(weights), evidenceCount: weights.length }];
    }),
  );
}

/** Evidence named in words on the event itself counts as one piece of moderate strength. */
function namedEvidence(standing: EvidenceStanding | undefined): EvidenceWeight[] {
  if (standing === undefined || standing === 'CLAIM') return [];
  const bearing = standing === 'SUPPORTED' ? 'SUPPORTS' : 'CONTRADICTS';
  return [{ bearing, strength: 'MODERATE', isStatement: false, kind: 'NAMED' }];
}
