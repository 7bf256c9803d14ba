import type { Blocker } from './blocker.js';
import { latestCheck } from './latestCheck.js';
import type { FinalCheckFacts, ProcedureFacts } from './readinessFacts.js';

const DAY_MS = 24 * 60 * 60 * 1000;

/** A passed final check that will lapse, or has. */
export interface CheckLapse {
  readonly procedureCode: string;
  readonly name: string;
  /** Set where it is not a check of the rig's own: the role that nobody with good checks fills then. */
  readonly roleName?: string;
  /** The check holds up to, not including, this instant. */
  readonly lapsesAtMs: number;
}

export interface FinalCheckStanding {
  /** Those that no passing of time changes; lapsed checks come on top. */
  readonly blockers: readonly Blocker[];
  readonly lapses: readonly CheckLapse[];
}

/**
 * How the final checks stand, apart from the clock. With no procedure named at all nothing can be
 * shown to have been checked, so that counts as a check due.
 */
export function finalCheckStanding(
  rigId: string,
  procedures: readonly ProcedureFacts[],
  finalChecks: readonly FinalCheckFacts[],
): FinalCheckStanding {
  if (procedures.length === 0) return { blockers: [noneNamed(rigId)], lapses: [] };
  const blockers: Blocker[] = [];
  const lapses: CheckLapse[] = [];
  for (const { procedureCode, name, validityDays } of procedures) {
    const subject = { subjectKind: 'PROCEDURE', subjectId: procedureCode } as const;
    const latest = latestCheck(procedureCode, finalChecks);
    if (latest === null) {
      blockers.push({
        ...subject,
        code: 'FINAL_CHECK_MISSING',
        level: 'CHECKS_DUE',
        message: `The final check “${name}” has not been made.`,
        wouldBeMetBy: `Make the final check “${name}” and record it as passed.`,
      });
    } else if (!latest.isPassed) {
      blockers.push({
        ...subject,
        code: 'FINAL_CHECK_FAILED',
        level: 'NOT_READY',
        message: `The latest final check “${name}” failed.`,
        wouldBeMetBy: `Find and mend the cause, then make “${name}” again and record it as passed.`,
      });
    } else if (validityDays !== null) {
      lapses.push({ procedureCode, name, lapsesAtMs: latest.doneAtMs + validityDays * DAY_MS });
    }
  }
  return { blockers, lapses };
}

function noneNamed(rigId: string): Blocker {
  return {
    code: 'NO_FINAL_CHECK_NAMED',
    level: 'CHECKS_DUE',
    message: 'No final check is named for this rig, so none can have been passed.',
    subjectKind: 'ITEM',
    subjectId: rigId,
    wouldBeMetBy: 'Name at least one final check procedure, make it and record it as passed.',
  };
}
