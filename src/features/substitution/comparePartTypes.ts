import { compareCapacitors } from '../../domain/parts/compareCapacitors.js';
import { compareTubes, type Comparison } from '../../domain/parts/compareTubes.js';
import { capacitorRatingsOf, tubeRatingsOf, type PartFacts } from './partFacts.js';
import type { HeaterSupply } from './substitutionGrade.js';

const refused = (why: string): Comparison => ({
  grade: null,
  whyNot: [why],
  worse: [],
  recheck: [],
  unproven: [],
});

/** Whether one part type could stand in for another, by what is known of their ratings. */
export function comparePartTypes(
  original: PartFacts,
  candidate: PartFacts,
  supply: HeaterSupply,
): Comparison {
  if (original.kind !== candidate.kind) return refused('It is another sort of part.');
  if (original.kind === 'TUBE') {
    return compareTubes(tubeRatingsOf(original), tubeRatingsOf(candidate), supply);
  }
  if (original.kind === 'CAPACITOR') {
    const [one, other] = [capacitorRatingsOf(original), capacitorRatingsOf(candidate)];
    if (!one || !other) return refused('The capacitance of one of them is not written down.');
    return compareCapacitors(one, other);
  }
  return refused('For this sort of part nothing is computed: write the substitution down by hand.');
}
