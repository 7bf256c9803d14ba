import type { HazardKind } from '../hazards/hazardKind.js';
import type { EarningRuleKind } from '../tasks/earningRuleKind.js';
import type { TaskKind } from '../tasks/taskKind.js';

/** One task of a template, as it is kept and as a file gives it. */
export interface TemplateTask {
  title: string;
  kind: TaskKind;
  optimisticMinutes: number;
  likelyMinutes: number;
  pessimisticMinutes: number;
  rule: EarningRuleKind;
  steps: { title: string; weight: number }[];
  /** Positions in the template, from 0, of the tasks that come before it. */
  predecessorPositions: number[];
  hazardKinds: HazardKind[];
  note: string | null;
}
