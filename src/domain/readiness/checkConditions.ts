import { dayInZone } from '../dates/dayInZone.js';
import { allOf, metLeaf, unmetLeaf, type Condition, type Evidence } from './condition.js';
import { finalCheckStanding } from './finalCheckStanding.js';
import { latestCheck } from './latestCheck.js';
import { lapsedBlocker } from './lapsedBlocker.js';
import type { FinalCheckFacts, ProcedureFacts } from './readinessFacts.js';

/** The instant that is asked about, and the zone whose days the sentences name. */
export interface AskedMoment {
  readonly nowMs: number;
  readonly zone: string;
}

/** That every final check named for an item is passed, and not lapsed at an instant. */
export function checkConditions(
  itemId: string,
  procedures: readonly ProcedureFacts[],
  finalChecks: readonly FinalCheckFacts[],
  { nowMs, zone }: AskedMoment,
): Condition {
  const about = {
    code: 'FINAL_CHECKS_PASSED',
    itemId,
    subjectKind: 'ITEM',
    subjectId: itemId,
  } as const;
  const { blockers, lapses } = finalCheckStanding(itemId, procedures, finalChecks);
  const leaves = procedures.map(({ procedureCode, name }) => {
    const evidence = checkEvidence(procedureCode, finalChecks);
    const lapse = lapses.find((one) => one.procedureCode === procedureCode);
    const blocker =
      blockers.find(({ subjectId }) => subjectId === procedureCode) ??
      (lapse && nowMs >= lapse.lapsesAtMs ? lapsedBlocker(lapse, zone) : undefined);
    if (blocker) return unmetLeaf(about, blocker, evidence);
    const until = lapse ? `, until ${dayInZone(lapse.lapsesAtMs, zone)}` : '';
    const subject = { subjectKind: 'PROCEDURE', subjectId: procedureCode } as const;
    return metLeaf({ ...about, ...subject }, `“${name}” is passed${until}.`, evidence);
  });
  const none = procedures.length === 0 ? blockers.map((one) => unmetLeaf(about, one)) : [];
  return allOf(about, 'Every final check must be passed and not lapsed.', [...leaves, ...none]);
}

function checkEvidence(procedureCode: string, checks: readonly FinalCheckFacts[]): Evidence[] {
  const latest = latestCheck(procedureCode, checks);
  if (latest === null) return [];
  const { checkId, doneAtMs, isPassed } = latest;
  const words = isPassed ? 'The latest check, passed.' : 'The latest check, failed.';
  return [{ recordKind: 'FINAL_CHECK', recordId: checkId, atMs: doneAtMs, words }];
}
