import { isNeededFor } from '../../domain/worth/standards.js';
import type { Prospects } from '../../domain/worth/outcomes.js';
import {
  worthKnowingCost,
  worthKnowingSuccess,
  worthKnowingValue,
} from '../../domain/worth/worthKnowing.js';
import type { ReckonedProject } from '../costToCome/reckonProjects.js';
import type { InquiryKind } from './inquiryKind.js';
import { hoursShare } from './prospectsOf.js';
import type { Uncertainty } from './uncertainty.js';

/** Something that is not known, with what knowing it is worth at the most, in minor units. */
export interface Question {
  kind: Uncertainty;
  what: string;
  worth: number;
  usualInquiry: InquiryKind;
  partTypeId: string | null;
  plannedCostId: string | null;
}

/** What is not known of a project, each taken alone, the most worth knowing first. */
export function openQuestions(prospects: Prospects, project: ReckonedProject): Question[] {
  const { lines, trials, forecast, ratePerHour } = project;
  const none = { partTypeId: null, plannedCostId: null };
  const ofCosts = lines
    .filter(({ amount }) => amount.variance > 0)
    .map(({ id, what, neededFrom, partTypeId, plannedCostId }): Question => {
      const row = trials.rows.get(id) ?? new Float64Array(1);
      const worth = worthKnowingCost(prospects, {
        trials: row,
        bornBy: (standard) => (isNeededFor(standard, neededFrom) ? 1 : 0),
      });
      const kind = plannedCostId === null ? 'PART_PRICE' : 'PLANNED_COST';
      return { kind, what, worth, usualInquiry: 'QUOTATION', partTypeId, plannedCostId };
    });
  const questions: Question[] = [
    ...ofCosts,
    {
      kind: 'SUCCESS',
      what: 'whether finishing reaches the standard',
      worth: worthKnowingSuccess(prospects),
      usualInquiry: 'TEST',
      ...none,
    },
    {
      kind: 'VALUE_FINISHED',
      what: 'what it would be worth when finished',
      worth: worthKnowingValue(prospects),
      usualInquiry: 'QUOTATION',
      ...none,
    },
  ];
  if (ratePerHour !== null && forecast.forecast.hours.varianceHours > 0) {
    questions.push({
      kind: 'OWN_HOURS',
      what: 'how many hours are left',
      worth: worthKnowingCost(prospects, {
        trials: forecast.forecast.totals.map((hours) => hours * ratePerHour),
        bornBy: (standard) => hoursShare(project, standard),
      }),
      usualInquiry: 'INSPECTION',
      ...none,
    });
  }
  return questions.sort((one, other) => other.worth - one.worth);
}
