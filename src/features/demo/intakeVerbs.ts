import { z } from 'zod';
import { globalId, splitGlobalId } from '../../api/kit/globalId.js';
import { queryInWork } from '../../db/queryInWork.js';
import { FindingSeverity } from '../findings/findingSeverity.js';
import { FindingStatus } from '../findings/findingStatus.js';
import { recordFinding } from '../findings/recordFinding.js';
import { settleFinding } from '../findings/settleFinding.js';
import { clearHazard } from '../hazards/clearHazard.js';
import { HazardKind } from '../hazards/hazardKind.js';
import { raiseHazard } from '../hazards/raiseHazard.js';
import { PositionState } from '../inspections/positionState.js';
import { recordInspection } from '../inspections/recordInspection.js';
import { Zone } from '../inspections/zone.js';
import { keptVersion } from './keptVersion.js';
import { storyVerb, text, type Telling } from './storyEvent.js';

const finding = {
  /** What later events call it. */
  key: text.optional(),
  zone: z.enum(Zone),
  severity: z.enum(FindingSeverity),
  note: text,
  hazards: z.array(z.enum(HazardKind)).optional(),
};

/** A position alone, or with a remark: `V3` or `{ V3: "getter gone white" }`. */
const position = z.union([text, z.record(text, text)]);

const ofItem = ({ item }: Telling, key: string): string => `${item} ${key}`;

export const intakeVerbs = {
  inspect: storyVerb(
    'recordInspection',
    {
      by: text.optional(),
      note: text.optional(),
      findings: z.array(z.strictObject(finding)).default([]),
      fitOut: z.partialRecord(z.enum(PositionState), z.array(position)).default({}),
      /** The state of every position that is not named. */
      others: z.enum(PositionState).optional(),
    },
    async (telling, event) => {
      const { work, names, item } = telling;
      const named = Object.entries(event.fitOut).flatMap(([state, positions]) =>
        positions.map((entry) => checked(state as PositionState, entry)),
      );
      const seen = new Set(named.map(({ designator }) => designator));
      const { others } = event;
      const rest = others === undefined ? [] : await designatorsOf(telling);
      const inspectionId = await recordInspection(work, {
        itemId: names.id('item', item),
        inspectorId: names.optionalId('person', event.by),
        note: event.note ?? null,
        findings: event.findings.map(({ key: _key, hazards, ...one }) => ({
          ...one,
          hazards: hazards ?? null,
        })),
        fitOutChecks: [
          ...named,
          ...rest
            .filter((designator) => !seen.has(designator))
            .map((designator) => ({ designator, state: others as PositionState })),
        ],
      });
      for (const { key, note } of event.findings) {
        if (key === undefined) continue;
        const [kept] = await queryInWork<{ id: string }>(
          work,
          'SELECT id AS "id" FROM finding WHERE inspection_id = ? AND note = ?',
          [inspectionId, note],
        );
        names.keep('finding', ofItem(telling, key), globalId('Finding', kept?.id ?? ''));
      }
    },
  ),

  find: storyVerb(
    'recordFinding',
    finding,
    async (telling, { key, hazards, zone, severity, note }) => {
      const { work, names, item } = telling;
      const id = await recordFinding(work, {
        itemId: names.id('item', item),
        zone,
        severity,
        note,
        hazards: hazards ?? null,
      });
      if (key !== undefined) {
        names.keep('finding', ofItem(telling, key), globalId('Finding', id));
      }
    },
  ),

  settle: storyVerb(
    'settleFinding',
    { finding: text, status: z.enum(FindingStatus), note: text },
    async (telling, event) => {
      const id = telling.names.id('finding', ofItem(telling, event.finding));
      const version = await keptVersion(telling.work, 'finding', id);
      return settleFinding(telling.work, { id, version, status: event.status, note: event.note });
    },
  ),

  raise: storyVerb(
    'raiseHazard',
    { hazard: z.enum(HazardKind), note: text },
    ({ work, names, item }, event) =>
      raiseHazard(work, { itemId: names.id('item', item), kind: event.hazard, note: event.note }),
  ),

  clear: storyVerb(
    'clearHazard',
    { hazard: z.enum(HazardKind), check: text, by: text },
    async ({ work, names, item }, event) => {
      const [open] = await queryInWork<{ id: string; version: number }>(
        work,
        `SELECT id AS "id", version AS "version" FROM hazard
         WHERE item_id = ? AND kind = ? AND cleared_at IS NULL ORDER BY raised_at, id`,
        [splitGlobalId(names.id('item', item))?.id ?? '', event.hazard],
      );
      if (!open) throw new Error(`${item} has no open hazard ${event.hazard} at this point.`);
      return clearHazard(work, {
        id: globalId('Hazard', open.id),
        version: open.version,
        clearedByCheck: event.check,
        clearedById: names.id('person', event.by),
      });
    },
  ),
};

function checked(state: PositionState, entry: z.infer<typeof position>) {
  if (typeof entry === 'string') return { designator: entry, state };
  const [[designator, note] = ['', '']] = Object.entries(entry);
  return { designator, state, note };
}

async function designatorsOf({ work, names, item }: Telling): Promise<string[]> {
  const rows = await queryInWork<{ designator: string }>(
    work,
    `SELECT fit_out_position.designator AS "designator" FROM fit_out_position
     JOIN item ON item.model_id = fit_out_position.model_id WHERE item.id = ?
     ORDER BY fit_out_position.ordinal`,
    [splitGlobalId(names.id('item', item))?.id ?? ''],
  );
  return rows.map(({ designator }) => designator);
}
