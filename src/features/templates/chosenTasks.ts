import type { TemplateTask } from './templateTask.js';

/**
 * Some tasks of a template, in its order. What waited for one that is left out waits for what that
 * one waited for, so that no order is lost.
 * @param positions of the template, each known
 */
export function chosenTasks(
  template: readonly TemplateTask[],
  positions: readonly number[],
): TemplateTask[] {
  const wanted = [...new Set(positions)].sort((left, right) => left - right);
  const places = new Map(wanted.map((position, place) => [position, place]));
  // Predecessors stand before their task, so one pass in order knows all that it needs.
  const before: number[][] = [];
  template.forEach(({ predecessorPositions }, own) => {
    before[own] = predecessorPositions.flatMap((position) => {
      const place = places.get(position);
      return place === undefined ? (before[position] ?? []) : [place];
    });
  });
  return wanted.flatMap((position) => {
    const task = template[position];
    if (!task) return [];
    return [{ ...task, predecessorPositions: [...new Set(before[position])] }];
  });
}
