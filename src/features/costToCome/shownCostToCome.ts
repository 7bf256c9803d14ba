import { summarise } from '../../domain/forecast/summarise.js';
import { chanceOfBreach } from '../../domain/worth/chanceOfBreach.js';
import { sumInCurrency } from '../../domain/money/sumInCurrency.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { shownBasis } from '../standing/standingFacts.js';
import { rounded } from '../worth/shownWorth.js';
import type { CostToCome, MoneyForecast } from './costToCome.type.js';
import type { ReckonedProject } from './reckonProjects.js';

/** Trials of money as the API shows them; the summary of trials is the one that hours have. */
export function shownMoney(trials: Float64Array, currency: string): MoneyForecast {
  const { expectedHours, p50Hours, p80Hours, p95Hours } = summarise(trials);
  const show = (minorUnits: number) => rounded(minorUnits, currency);
  return {
    expected: show(expectedHours),
    p50: show(p50Hours),
    p80: show(p80Hours),
    p95: show(p95Hours),
  };
}

/** Minor units that the ceiling of a project leaves, and the chance of passing it. */
export function standingOfCeiling({ ceiling, scale, spent, trials }: ReckonedProject) {
  if (ceiling === null || spent.kind === 'REFUSED' || !scale.isComplete) return null;
  const inHome = sumInCurrency([ceiling], scale.currency, scale.table);
  if (inHome.kind === 'REFUSED') return null;
  const soFar = spent.total.minorUnits;
  return {
    headroom: inHome.total.minorUnits - soFar,
    chance: chanceOfBreach(trials.money, soFar, inHome.total.minorUnits),
  };
}

export function shownCostToCome(reckoned: ReckonedProject, nowMs: number): CostToCome {
  const { project, lines, unpriced, trials, scale, spent, ratePerHour } = reckoned;
  const { currency } = scale;
  const ceiling = standingOfCeiling(reckoned);
  const problems = scale.problems();
  const isWhole = problems.length === 0;
  return {
    projectId: `Project_${project.id}`,
    currency,
    money: isWhole ? shownMoney(trials.money, currency) : null,
    withOwnTime: isWhole && ratePerHour !== null ? shownMoney(trials.withOwnTime, currency) : null,
    lines: lines.map(({ kind, what, count, amount, noteCount, newestNoteOn }) => ({
      kind,
      what,
      count,
      p50: rounded(amount.at(0.5), currency),
      p80: rounded(amount.at(0.8), currency),
      noteCount,
      newestNoteOn,
    })),
    unpriced,
    spentSoFar:
      spent.kind === 'SUM' ? moneyAmount(spent.total.minorUnits, spent.total.currency) : null,
    headroom: ceiling === null ? null : moneyAmount(ceiling.headroom, currency),
    chanceOfBreach: ceiling?.chance ?? null,
    problems:
      spent.kind === 'SUM'
        ? problems
        : [...problems, { code: 'INVALID', message: spent.why, path: ['exchangeRates'] }],
    basis: costBasis(reckoned, nowMs),
  };
}

export function costBasis(reckoned: ReckonedProject, nowMs: number) {
  const { lines, unpriced, inHandCount, trialCount, project, ratePerHour, scale } = reckoned;
  const unpricedCount = unpriced.reduce((sum, { count }) => sum + count, 0);
  return shownBasis(
    {
      method:
        'Seeded trials of the sum of what is needed and not in hand: parts as lognormals about the median of their price notes, planned costs as PERT betas; with own time, the trials of the hours left at the owner’s rate.',
      counted: [
        { what: 'costs to come', count: lines.length },
        { what: 'parts in hand', count: inHandCount },
        { what: 'parts needed without a price', count: unpricedCount },
        { what: 'trials', count: trialCount },
      ],
    },
    nowMs,
    [
      'A price is the more uncertain the fewer and older its notes: their spread is drawn towards 35 percent as if that were three notes more, times 1 + 1/n, and 10 percent a year wider (our own choice, no source).',
      'Costs are independent of one another and of the hours; parts of one type all cost the same.',
      `Seed “${project.seed}”: the same records give the same figures.`,
      ratePerHour === null
        ? 'Own time has no price here.'
        : 'Own time is priced by the terms of worth.',
      ...(unpricedCount === 0 ? [] : ['Parts without a price are in no figure: it costs more.']),
      ...scale.ratesInWords(),
    ],
  );
}
