import { sumInCurrency } from '../../domain/money/sumInCurrency.js';
import type { Money } from '../../domain/money/money.js';
import { chanceOfBreach } from '../../domain/worth/chanceOfBreach.js';
import { bestOf, mostToSpend, outcomesOf, type Outcome } from '../../domain/worth/outcomes.js';
import type { ReckonedProject } from '../costToCome/reckonProjects.js';
import { costBasis, standingOfCeiling } from '../costToCome/shownCostToCome.js';
import { moneyAmount } from '../money/moneyAmount.js';
import type { TargetStandard } from '../projects/targetStandard.js';
import { rounded, shownWorth } from '../worth/shownWorth.js';
import type { ReckonedItem } from '../worth/worthOfItems.js';
import { explanation } from './explanation.js';
import type { GoingOn, RatedInquiry } from './goingOn.type.js';
import type { OpenInquiry } from './goingOnFacts.reads.js';
import { openQuestions, type Question } from './openQuestions.js';
import { prospectsOf } from './prospectsOf.js';

export interface GoingOnFacts {
  item: ReckonedItem;
  project: ReckonedProject;
  target: TargetStandard;
  spent: readonly Money[];
  inquiries: readonly OpenInquiry[];
}

const byGain = (one: Outcome, other: Outcome): number => other.gain - one.gain;

/** Going on or stopping, as the API shows it. */
export function shownGoingOn(facts: GoingOnFacts, nowMs: number): GoingOn {
  const { item, project, target, spent } = facts;
  const { scale } = project;
  const { currency } = scale;
  const { premiumMinorUnits, premiumCurrency, premiumReason } = item.subject;
  const stated: Money | null =
    premiumMinorUnits === null || premiumCurrency === null
      ? null
      : { minorUnits: Number(premiumMinorUnits), currency: premiumCurrency };
  const premium = stated === null ? 0 : stated.minorUnits * (scale.factor(stated.currency) ?? 0);
  const prospects = prospectsOf(item, project, target, premium);
  const outcomes = outcomesOf(prospects).sort(byGain);
  const plain = bestOf(outcomesOf({ ...prospects, premium: 0 }).sort(byGain));
  const [best] = outcomes;
  const isDecidedByPremium =
    best !== undefined && (plain?.kind !== best.kind || plain.standard !== best.standard);
  const questions = openQuestions(prospects, project);
  const inquiries = ratedInquiries(facts, questions);
  const [first] = inquiries;
  const nextStep = first && first.netGain.minorUnits > 0 ? first : null;
  const sunk = sumInCurrency(spent, currency, scale.table);
  const finish = outcomes.find(({ kind }) => kind === 'FINISH');
  return {
    currency,
    choices: outcomes.map((outcome) => {
      const isFinish = outcome.kind === 'FINISH' && outcome.standard !== null;
      const most = isFinish ? mostToSpend(outcome, outcomes) : null;
      const costs = outcome.standard === null ? null : prospects.costs.get(outcome.standard);
      return {
        kind: outcome.kind,
        standard: outcome.standard,
        worth: rounded(outcome.worth, currency),
        premium: rounded(outcome.premium, currency),
        costToCome: rounded(outcome.cost, currency),
        gain: rounded(outcome.gain, currency),
        mostToSpend: most === null ? null : rounded(most, currency),
        chanceOfOverspending: most === null || !costs ? null : chanceOfBreach(costs, 0, most),
      };
    }),
    isDecidedByPremium,
    statedPremium: stated === null ? null : moneyAmount(stated.minorUnits, stated.currency),
    premiumReason,
    sunkCost: sunk.kind === 'SUM' ? moneyAmount(sunk.total.minorUnits, currency) : null,
    chanceOfBreach: standingOfCeiling(project)?.chance ?? null,
    questions: questions.map(({ kind, what, worth, usualInquiry }) => ({
      kind,
      what,
      worthKnowing: rounded(worth, currency),
      usualInquiry,
    })),
    nextStep,
    inquiries,
    explanation: explanation({
      currency,
      outcomes,
      mostToSpend: finish ? mostToSpend(finish, outcomes) : null,
      questions,
      nextStep,
      isDecidedByPremium,
    }),
    problems: uniqueProblems([...item.scale.problems(), ...scale.problems()]),
    basis: basisOf(facts, nowMs),
  };
}

const uniqueProblems = <Problem extends { message: string }>(problems: readonly Problem[]) => [
  ...new Map(problems.map((problem) => [problem.message, problem])).values(),
];

/** What each recorded inquiry would settle, against its cost; the greatest net gain first. */
function ratedInquiries({ project, inquiries }: GoingOnFacts, questions: readonly Question[]) {
  const { scale, ratePerHour } = project;
  const { currency } = scale;
  return inquiries
    .flatMap((inquiry): RatedInquiry[] => {
      const factor = scale.factor(inquiry.costCurrency);
      if (factor === null) return [];
      const question = questions.find(
        ({ kind, partTypeId, plannedCostId }) =>
          kind === inquiry.resolves &&
          partTypeId === inquiry.partTypeId &&
          plannedCostId === inquiry.plannedCostId,
      );
      const time = ((ratePerHour ?? 0) * inquiry.minutes) / 60;
      const cost = Number(inquiry.costMinorUnits) * factor + time;
      const worth = question?.worth ?? 0;
      return [
        {
          inquiryId: `Inquiry_${inquiry.id}`,
          description: inquiry.description,
          cost: rounded(cost, currency),
          worthKnowing: rounded(worth, currency),
          netGain: rounded(worth - cost, currency),
        },
      ];
    })
    .sort((one, other) => other.netGain.minorUnits - one.netGain.minorUnits);
}

function basisOf({ item, project }: GoingOnFacts, nowMs: number): GoingOn['basis'] {
  const [worth, cost] = [shownWorth(item, nowMs).basis, costBasis(project, nowMs)];
  const { successPercent } = item.subject;
  return {
    method:
      'Expected worth less expected cost to come of each choice, from here on; what was spent is the same under each and in none. The most to spend is the worth finished, with the premium, less what the best other choice leaves. Worth knowing: the expected value of perfect information on one uncertainty, all others as they are.',
    counted: [...worth.counted, ...cost.counted],
    assumptions: [
      successPercent === null
        ? 'Nothing is said of failing, so finishing is taken to succeed.'
        : `The owner gives finishing a chance of ${successPercent} percent; failing leaves it as it stands.`,
      'Only the project’s target and lower standards that work are weighed; for WORKING, hours for looks are left out in proportion.',
      'Worth is the mean of the interval’s lognormal. An inquiry is taken to settle its question wholly, so its worth is the most it can be.',
      ...new Set([...worth.assumptions, ...cost.assumptions]),
    ],
    asOf: worth.asOf,
  };
}
