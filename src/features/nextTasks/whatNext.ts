import type { ApiContext } from '../../api/kit/apiContext.js';
import { readyTasks } from '../../domain/network/readyTasks.js';
import { rankNextTasks, type NextTask } from '../../domain/nextTasks/rankNextTasks.js';
import { shownBasis } from '../standing/standingFacts.js';
import { readNextTaskFacts } from './nextTaskFacts.reads.js';

/** The tasks that can be done in the minutes that are free, ranked, each with its reasons. */
export async function whatNext(
  context: ApiContext,
  { minutes, most, itemId }: { minutes: number; most: number; itemId: string | null },
) {
  const { nowMs } = context;
  const facts = await readNextTaskFacts(context, itemId);
  const ranked = rankNextTasks(facts, minutes);
  const ready = readyTasks(facts.tasks, facts.edges);
  const heldBack = ready.flatMap(({ id }) => {
    const reasons = facts.heldBack.get(id);
    return reasons ? [{ id, taskId: id, reasons }] : [];
  });
  return {
    suggestions: ranked.slice(0, most).map((suggestion: NextTask) => ({
      id: suggestion.taskId,
      ...suggestion,
      hazards: facts.hazards.get(suggestion.taskId) ?? [],
    })),
    heldBack: heldBack.slice(0, most),
    basis: shownBasis(
      {
        method:
          'Open tasks of projects planned or active, with everything before them done or dropped, their parts put aside or on the shelf and the hazards of the set cleared or reckoned with; those expected to fit the time first, then by the points of what they unlock.',
        counted: [
          { what: 'tasks whose turn it is', count: ready.length },
          { what: 'of them held back', count: heldBack.length },
          { what: 'tasks looked at', count: facts.tasks.length },
        ],
      },
      nowMs,
      [
        'The points are weights of our own choice. What is left of a task is its estimate, read by the distribution chosen for it and multiplied by what the finished tasks of its kind say, given the hours spent on it.',
      ],
    ),
  };
}
