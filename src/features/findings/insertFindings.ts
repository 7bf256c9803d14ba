import { v7 as uuidv7 } from 'uuid';
import { insertRows } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { HazardEntity } from '../hazards/hazard.entity.js';
import { FindingEntity } from './finding.entity.js';
import type { FindingInput } from './finding.inputs.js';

/** Keeps findings that have been checked, each with the hazards that come with it. */
export async function insertFindings(
  work: UnitOfWork,
  seen: { itemId: string; inspectionId: string | null; seenAt: string },
  findings: readonly (FindingInput & { note: string })[],
): Promise<string[]> {
  const withIds = findings.map((finding) => ({ ...finding, id: uuidv7() }));
  await insertRows(
    work,
    FindingEntity,
    withIds.map(({ id, zone, severity, note }) => ({
      ...seen,
      id,
      zone,
      severity,
      note,
      status: 'OPEN',
      settledAt: null,
      settledNote: null,
    })),
  );
  await insertRows(
    work,
    HazardEntity,
    withIds.flatMap(({ id, note, hazards }) =>
      [...new Set(hazards ?? [])].map((kind) => ({
        itemId: seen.itemId,
        findingId: id,
        kind,
        note,
        raisedAt: seen.seenAt,
        clearedAt: null,
        clearedByCheck: null,
        clearedById: null,
      })),
    ),
  );
  return withIds.map(({ id }) => id);
}
