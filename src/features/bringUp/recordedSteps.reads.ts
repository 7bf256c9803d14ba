import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import { stepOutcome, type StepOutcome } from '../../domain/bringUp/stepOutcome.js';
import { judgeReading, type JudgeableReading, type Judgement } from '../readings/judgeReading.js';
import { readLimitsOfSubjects, type KeptLimit } from '../readings/limitsOfSubjects.reads.js';
import type { Procedure, ProcedureStep } from './procedureShape.js';
import type { StepVersion } from './stepVersion.js';

export interface RunOfProcedure {
  id: string;
  itemId: string;
  procedure: Procedure;
}

/** One reading of a step with what the limits say of it now. */
export interface JudgedStepReading extends JudgeableReading {
  id: string;
  judgement: Judgement;
}

/** A step of a run: what the procedure asks, and the latest that was recorded of it. */
export interface StepOfRun {
  step: ProcedureStep;
  outcome: StepOutcome;
  latest: RecordedStepRow | null;
  readings: JudgedStepReading[];
  /** What was put right or taken back, oldest first. */
  earlier: StepVersion[];
}

export interface RecordedStepRow {
  id: string;
  bringUpId: string;
  stepKey: string;
  holds: boolean[];
  readingIds: string[];
  doneAt: string;
  doneById: string | null;
  findingId: string | null;
  note: string | null;
  earlierVersions: StepVersion[];
  /** Taken back: kept, and counted no more. */
  isWithdrawn: boolean;
}

/** The steps of some runs as they stand, judged by the procedure's limits and the model's. */
export async function readStepsOfRuns(
  source: RowSource,
  runs: readonly RunOfProcedure[],
): Promise<Map<string, StepOfRun[]>> {
  const recorded = await readRecorded(
    source,
    runs.map(({ id }) => id),
  );
  const ofStep = groupedBy(recorded, (row) => `${row.bringUpId} ${row.stepKey}`);
  const latest = new Map(
    recorded
      .filter(({ isWithdrawn }) => !isWithdrawn)
      .map((row) => [`${row.bringUpId} ${row.stepKey}`, row]),
  );
  const readings = await readReadings(
    source,
    [...latest.values()].flatMap(({ readingIds }) => readingIds),
  );
  const limits = await readLimitsOfSubjects(
    source,
    [],
    [...new Set(runs.map(({ itemId }) => itemId))],
  );
  return new Map(
    runs.map(({ id, itemId, procedure }) => [
      id,
      procedure.steps.map((step): StepOfRun => {
        const row = latest.get(`${id} ${step.key}`) ?? null;
        const own = (row?.readingIds ?? []).flatMap((readingId) => readings.get(readingId) ?? []);
        const judged = own.map((reading) => ({
          ...reading,
          judgement: judgeReading(reading, limitsOfStep(step, limits.get(itemId) ?? [])),
        }));
        const words = judged.map(({ judgement }) => judgement.word);
        const outcome = stepOutcome(row && { holds: row.holds, words });
        const earlier = (ofStep.get(`${id} ${step.key}`) ?? [])
          .flatMap(({ earlierVersions }) => earlierVersions)
          .sort((left, right) => (left.replacedAt < right.replacedAt ? -1 : 1));
        return { step, outcome, latest: row, readings: judged, earlier };
      }),
    ]),
  );
}

/** The limits that the procedure states, and those of the model: the strictest end counts. */
export const limitsOfStep = (step: ProcedureStep, ofModel: readonly KeptLimit[]): KeptLimit[] => [
  ...step.readings
    .filter(({ lower, upper }) => lower !== null || upper !== null)
    .map(({ quantity, lower, upper, unit, source }) => ({
      quantity,
      tier: null,
      lower,
      upper,
      unit,
      source,
    })),
  ...ofModel,
];

/** In the order in which they were written down: of several times of one step the last counts. */
async function readRecorded(
  { rows, dialect }: RowSource,
  bringUpIds: readonly string[],
): Promise<RecordedStepRow[]> {
  const found = await rows<Record<keyof RecordedStepRow, string | null>>(
    `SELECT id AS "id", bring_up_id AS "bringUpId", step_key AS "stepKey", holds AS "holds",
       reading_ids AS "readingIds", done_at AS "doneAt", done_by_id AS "doneById",
       finding_id AS "findingId", note AS "note", earlier_versions AS "earlierVersions",
       withdrawn_at AS "isWithdrawn"
     FROM bring_up_step WHERE ${dialect.isAnyOf('bring_up_id')} ORDER BY recorded_at, id`,
    [listParameter(bringUpIds)],
  );
  return found.map((row) => ({
    ...(row as unknown as RecordedStepRow),
    holds: JSON.parse(String(row.holds)) as boolean[],
    readingIds: JSON.parse(String(row.readingIds)) as string[],
    earlierVersions: JSON.parse(row.earlierVersions ?? '[]') as StepVersion[],
    isWithdrawn: row.isWithdrawn !== null,
  }));
}

async function readReadings({ rows, dialect }: RowSource, ids: readonly string[]) {
  const found = await rows<JudgeableReading & { id: string }>(
    `SELECT id AS "id", quantity AS "quantity", value AS "value", unit AS "unit", tier AS "tier"
     FROM reading WHERE ${dialect.isAnyOf('id')}`,
    [listParameter(ids)],
  );
  return groupedBy(found, ({ id }) => id);
}
