import { shownBasis } from '../standing/standingFacts.js';
import type { ForecastOfProject } from './forecastOfProjects.js';
import type { PlannedProject } from './plans.reads.js';

/** How a forecast came about, and what it takes for granted, in sentences. */
export function forecastBasis(
  { forecast, trials, calibration }: ForecastOfProject,
  { correlationPercent, seed }: PlannedProject,
  { isCalibrated, nowMs }: { isCalibrated: boolean; nowMs: number },
) {
  const refuted = forecast.tasks.filter(({ remaining }) => remaining.kind === 'REFUTED').length;
  const unestimated = forecast.unestimatedTaskIds.length;
  const assumptions = [
    'Each estimate is read as its own distribution of the whole task; what is left is that, given that the hours spent so far did not finish it.',
    correlationPercent === 0
      ? 'Tasks run over or under independently of one another.'
      : `What delays one task delays others: the normal scores of any two correlate by ${correlationPercent / 100}.`,
    isCalibrated
      ? 'Estimates are multiplied by what your finished tasks say of such estimates; see the multipliers.'
      : 'Estimates are taken as entered, not multiplied by what your finished tasks say of them.',
    `Seeded trials (xoshiro128**, seed “${seed}”): the same records give the same figures.`,
    'The longest chain is the least time that any number of hands would need, were nobody to wait for hands.',
    ...(refuted === 0
      ? []
      : [
          `${refuted} of the open tasks passed the pessimistic figure. What is left of these is the tail of a lognormal; a new estimate would be better.`,
        ]),
    ...(unestimated === 0 ? [] : [`${unestimated} open tasks have no estimate and no hours here.`]),
  ];
  return shownBasis(
    {
      method:
        'Seeded trials of the hours left of every open task; percentiles of their sum and of the longest chain through the order of tasks. Mean and variance by formula stand beside them.',
      counted: [
        { what: 'open tasks', count: forecast.tasks.length },
        { what: 'trials', count: trials },
        { what: 'finished tasks that the multipliers rest on', count: calibration.taskCount },
      ],
    },
    nowMs,
    assumptions,
  );
}
