import type { StepOfRun } from './recordedSteps.reads.js';

/** What a failed step found, in a sentence for the finding that it opens. */
export function whatFailed({ step, latest, readings }: StepOfRun): string {
  const denied = step.statements.filter((_, index) => latest?.holds[index] === false);
  const broken = readings.flatMap(({ quantity, value, unit, judgement: { word, limit } }) => {
    if (limit === null || (word !== 'BELOW_LIMIT' && word !== 'ABOVE_LIMIT')) return [];
    const end =
      word === 'BELOW_LIMIT' ? `below ${limit.lower ?? ''}` : `above ${limit.upper ?? ''}`;
    return [`${quantity} ${value} ${unit} is ${end} ${limit.unit}`];
  });
  const told = [...broken, ...denied.map((statement) => `does not hold: ${statement}`)];
  return `Bring-up failed at “${step.title}”: ${told.join('; ')}.`;
}
