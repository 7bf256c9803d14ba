import { compareText } from '../compareText.js';
import { readyTasks } from '../network/readyTasks.js';
import type { TaskState } from '../taskState.js';
import type { TaskEdge } from '../network/taskEdge.js';
import { whatItUnlocks, type NextTaskReason } from './whatItUnlocks.js';

/** A task of an open project, with what the choice of the next one asks of it. */
export interface TaskToChoose {
  readonly id: string;
  readonly projectId: string;
  readonly itemId: string;
  readonly title: string;
  readonly kind: string;
  readonly state: TaskState;
  /** Expected hours left, given those spent. */
  readonly leftHours: number;
  /** Budgeted hours of it that are not earned yet. */
  readonly unearnedHours: number;
}

export interface ItemToChoose {
  readonly id: string;
  /** As it stands in a sentence: R-005 “Kestrel”. */
  readonly name: string;
  readonly isReadyForUse: boolean;
  /** Nothing but final checks stands in the way. */
  readonly lacksOnlyChecks: boolean;
}

export interface ProjectToChoose {
  readonly id: string;
  readonly title: string;
  readonly budgetedHours: number;
}

export interface NextTaskFacts {
  readonly tasks: readonly TaskToChoose[];
  readonly edges: readonly TaskEdge[];
  readonly items: ReadonlyMap<string, ItemToChoose>;
  readonly projects: ReadonlyMap<string, ProjectToChoose>;
  /** Tasks that something at hand forbids (a part, a hazard), with why. */
  readonly heldBack: ReadonlyMap<string, readonly string[]>;
}

export interface NextTask {
  readonly taskId: string;
  readonly leftMinutes: number;
  /** Expected to be finished in the time given. */
  readonly fits: boolean;
  /** The sum of the reasons' points; only their order means something. */
  readonly points: number;
  readonly reasons: readonly NextTaskReason[];
}

/**
 * The tasks that can be done now, those that fit the time first, then by what finishing them
 * unlocks; at equal points the order of the list decides. The weights are our own choice, no source.
 * @param minutes free now, above 0
 */
export function rankNextTasks(facts: NextTaskFacts, minutes: number): NextTask[] {
  const ready = readyTasks(facts.tasks, facts.edges);
  const doable = ready.filter(({ id }) => !facts.heldBack.has(id));
  const placeInList = new Map(facts.tasks.map(({ id }, place) => [id, place]));
  return doable
    .map((task) => {
      const reasons = whatItUnlocks(task, doable, facts);
      const leftMinutes = Math.max(1, Math.round(task.leftHours * 60));
      return {
        taskId: task.id,
        leftMinutes,
        fits: leftMinutes <= minutes,
        points: reasons.reduce((sum, reason) => sum + reason.points, 0),
        reasons,
      };
    })
    .sort(
      (left, right) =>
        Number(right.fits) - Number(left.fits) ||
        right.points - left.points ||
        (placeInList.get(left.taskId) ?? 0) - (placeInList.get(right.taskId) ?? 0) ||
        compareText(left.taskId, right.taskId),
    );
}
