import type { Outcome } from '../../domain/worth/outcomes.js';
import { rounded } from '../worth/shownWorth.js';
import type { RatedInquiry } from './goingOn.type.js';
import type { Question } from './openQuestions.js';

const standardWords = {
  NOT_WORKING: 'as it is',
  WORKING: 'to working order',
  WORKING_AND_CLEAN: 'to working order and clean',
  AS_MADE: 'to the state it was made in',
  FOR_SHOW: 'for show',
} as const;

const choiceWords = {
  FINISH: 'finishing it',
  LEAVE: 'leaving it as it stands',
  SELL: 'selling it as it stands',
  PART_OUT: 'selling its parts',
  KEEP_FOR_SPARES: 'keeping it for spares',
} as const;

export interface Explained {
  currency: string;
  /** The best first. */
  outcomes: readonly Outcome[];
  /** The most to spend on the best finish; null when none can be valued. */
  mostToSpend: number | null;
  questions: readonly Question[];
  nextStep: RatedInquiry | null;
  isDecidedByPremium: boolean;
}

/** The answer in three sentences at the most: what is best, how far to go, what to find out. */
export function explanation(told: Explained): string {
  const { outcomes, currency, mostToSpend } = told;
  const [best, second] = outcomes;
  if (!best) {
    return 'Nothing can be said yet: note a value of the model or the item, or prices of its parts.';
  }
  const money = (minorUnits: number) => `${rounded(minorUnits, currency).amount} ${currency}`;
  const because = told.isDecidedByPremium ? ', by the premium that you state' : '';
  const first = second
    ? `From here, ${named(best)} is expected to leave ${money(best.gain)}, which is ${money(best.gain - second.gain)} more than ${named(second)}${because}.`
    : `From here, ${named(best)} is expected to leave ${money(best.gain)}; no other choice can be valued.`;
  const finish = outcomes.find(({ kind }) => kind === 'FINISH');
  const limit =
    finish && mostToSpend !== null
      ? `On ${named(finish)} it makes sense to spend up to ${money(mostToSpend)} more, and ${money(finish.cost)} is expected.`
      : 'What it would be worth when finished is not known, so no limit of spending can be given.';
  return [first, limit, lookingFurther(told, money)].join(' ');
}

function named({ kind, standard }: Outcome): string {
  return kind === 'FINISH' && standard !== null
    ? `${choiceWords.FINISH} ${standardWords[standard]}`
    : choiceWords[kind];
}

function lookingFurther({ nextStep, questions }: Explained, money: (amount: number) => string) {
  if (nextStep) {
    return `First find out more: “${nextStep.description}” costs ${nextStep.cost.amount} ${nextStep.cost.currency} and may be worth up to ${nextStep.worthKnowing.amount}.`;
  }
  const [question] = questions;
  return question && question.worth >= 1
    ? `What would most change this is to know ${inWords(question)}, worth up to ${money(question.worth)}.`
    : 'Nothing that could be found out beforehand is expected to change this.';
}

const inWords = ({ kind, what }: Question): string =>
  kind === 'PART_PRICE' || kind === 'PLANNED_COST' ? `the price of “${what}”` : what;
