import type { Checklist } from '../../db/checklist.js';
import { ucumProblem } from '../readings/ucum.js';
import type { PartTypeEntity } from './partType.entity.js';
import type { RatingInput } from './partType.inputs.js';

const mostRatings = 100;

/** Ratings as they are kept; what is wrong with them goes to the checklist. */
export function checkRatings(
  check: Checklist,
  ratings: readonly RatingInput[],
): PartTypeEntity['ratings'] {
  check.that(ratings.length <= mostRatings, `${mostRatings} ratings are the most.`, ['ratings']);
  return ratings.slice(0, mostRatings).map(({ name, value, unit, source }, index) => {
    const path = ['ratings', String(index)];
    const problem = ucumProblem(unit);
    if (problem !== null) check.refuse(problem, [...path, 'unit']);
    return {
      name: check.words(name, [...path, 'name'], 80),
      value,
      unit,
      source: check.text(source, [...path, 'source']),
    };
  });
}
