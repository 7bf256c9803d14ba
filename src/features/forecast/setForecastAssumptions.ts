import { optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { oneProjectAtATime } from '../projects/oneProjectAtATime.js';
import { whoWorks } from '../work/whoWorks.js';
import { keepPlan } from './keepPlan.js';
import type { SetForecastAssumptionsInput } from './projectPlan.inputs.js';

const longestSeed = 60;
const mostCorrelation = 0.95;

export async function setForecastAssumptions(
  work: UnitOfWork,
  input: SetForecastAssumptionsInput,
): Promise<string> {
  const id = recordId('Project', input.projectId, ['projectId']);
  const check = new Checklist(work);
  await check.exists('project', id, ['projectId']);
  const { correlation, seed } = input;
  if (isGiven(correlation)) {
    check.that(
      correlation >= 0 && correlation <= mostCorrelation,
      'Give the correlation as a number from 0 to 0.95.',
      ['correlation'],
    );
  }
  const words = isGiven(seed) ? check.words(seed, ['seed'], longestSeed) : seed;
  if (isGiven(input.workedById)) await whoWorks(work, check, input.workedById, ['workedById']);
  check.done();
  await oneProjectAtATime(work, id);
  await keepPlan(work, id, input.version, {
    ...(isGiven(correlation) && { correlationPercent: Math.round(correlation * 100) }),
    ...(words !== undefined && { seed: words }),
    ...(input.workedById !== undefined && {
      workedById: optionalRecordId('Party', input.workedById, ['workedById']),
    }),
  });
  return id;
}
