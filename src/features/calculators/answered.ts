import { argumentProblem } from '../../api/kit/argumentProblem.js';
import { BadInputs } from '../../domain/calculators/checkedInputs.js';

/** A calculation whose refusal is the person's to mend. */
export function answered<Answer>(calculate: () => Answer): Answer {
  try {
    return calculate();
  } catch (error) {
    if (error instanceof BadInputs) throw argumentProblem(error.message);
    throw error;
  }
}
