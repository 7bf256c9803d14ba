import { checkedInputs, inVolts } from './checkedInputs.js';
import { reformingRules, type ReformingRule, type ReformingRuleName } from './reformingRules.js';
import { localCodesFirst, type Working } from './working.js';

export interface ReformingAsked {
  readonly ratedVolts: number;
  /** What the supply can give; the sum never goes above the rated voltage. */
  readonly supplyVolts: number | null;
  /** null: not known, then reckoned as long as the set is old: 40 years. */
  readonly monthsStored: number | null;
  /** null: the rule with the least current. */
  readonly rule: ReformingRuleName | null;
}

/** A voltage to go to, and how long to stay there. */
export interface ReformingStep {
  readonly volts: number;
  /** null: until the current has fallen to a tenth of the most that may flow. */
  readonly minutes: number | null;
}

/** What one published rule comes to for this capacitor. */
export interface ReformingPlan {
  readonly rule: ReformingRule;
  readonly seriesOhms: number;
  /** Into a capacitor that is a short at the full voltage: the worst case. */
  readonly worstMilliamperes: number;
  readonly worstWatts: number;
  readonly steps: readonly ReformingStep[];
  readonly minutesAtFullVoltage: number;
  /** What speaks against it here, in sentences. */
  readonly remarks: readonly string[];
}

export interface Reforming {
  readonly applied: ReformingPlan;
  readonly others: readonly ReformingPlan[];
  /** What the maker's note says of a capacitor that lay so long. */
  readonly byStorage: string;
  readonly working: Working;
}

const assumedMonths = 480;

/**
 * How an electrolytic capacitor that lay idle is brought back to its voltage: after the rule asked
 * for, or the one that lets the least current flow; with what the other published rules say.
 * @throws BadInputs, also for a supply above the rated voltage
 */
export function reforming(asked: ReformingAsked): Reforming {
  const { ratedVolts, supplyVolts } = asked;
  const monthsStored = asked.monthsStored ?? assumedMonths;
  const inputs = checkedInputs(
    [
      { ...inVolts('ratedVolts', ratedVolts), from: 3, upTo: 1000, isOpen: false },
      ...(supplyVolts === null ? [] : [{ ...inVolts('supplyVolts', supplyVolts), upTo: 1000 }]),
      { name: 'monthsStored', value: monthsStored, unit: 'mo', from: 0, upTo: 1200 },
    ],
    [
      supplyVolts !== null &&
        supplyVolts > ratedVolts &&
        `supplyVolts is ${supplyVolts}; never go above the rated voltage, ${ratedVolts}.`,
    ],
  );
  const fullVolts = Math.min(ratedVolts, supplyVolts ?? ratedVolts);
  const plans = reformingRules
    .map((rule) => planAfter(rule, ratedVolts, fullVolts, monthsStored))
    .sort((one, other) => one.worstMilliamperes - other.worstMilliamperes);
  const applied = plans.find(({ rule }) => rule.name === asked.rule) ?? plans[0];
  if (!applied) throw new Error('there are no rules for re-forming');
  return {
    applied,
    others: plans.filter((plan) => plan !== applied),
    byStorage: byStorage(monthsStored),
    working: {
      formula: 'I = V/R and P = V²/R into a short; steps of R times the most current',
      inputs,
      assumptions: [
        ...(asked.monthsStored === null
          ? ['How long it lay idle is not known; 40 years are assumed.']
          : []),
        ...(asked.rule === null
          ? ['No rule was named: the one that lets the least current flow is applied.']
          : []),
        'The capacitor is out of the set, and its polarity is known.',
      ],
      sources: plans.map(({ rule }) => rule.source),
      cautions: [
        'The published rules disagree. Which one was applied is said; the others stand beside it.',
        'Never above the rated voltage; if it warms, hisses, bulges or leaks, switch off and discard it.',
        'Stand clear behind a cover: an electrolytic may burst. It holds a lethal charge afterwards: discharge it through a resistor and measure.',
        'A capacitor that re-forms is not thereby a good one: capacitance, series resistance and leakage decide.',
        localCodesFirst,
      ],
    },
  };
}

function planAfter(
  rule: ReformingRule,
  ratedVolts: number,
  fullVolts: number,
  monthsStored: number,
): ReformingPlan {
  const seriesOhms = rule.seriesOhms(ratedVolts);
  const throughShort = (fullVolts / seriesOhms) * 1000;
  const worstMilliamperes = Math.min(throughShort, rule.mostMilliamperes ?? Infinity);
  const worstWatts = (worstMilliamperes / 1000) ** 2 * seriesOhms;
  const minutesAtFullVoltage = rule.holdMinutes(monthsStored);
  const { namedWatts } = rule;
  return {
    rule,
    seriesOhms,
    worstMilliamperes,
    worstWatts,
    minutesAtFullVoltage,
    steps: stepsTo(rule, seriesOhms, fullVolts, minutesAtFullVoltage),
    remarks: [
      ...(namedWatts !== null && worstWatts > namedWatts
        ? [
            `Into a short the resistor takes ${worstWatts.toFixed(2)} W; the ${namedWatts} W that the rule names are too little above ${Math.sqrt(namedWatts * seriesOhms).toFixed(0)} V.`,
          ]
        : []),
      ...(worstMilliamperes > 50
        ? [
            `It lets ${worstMilliamperes.toFixed(0)} mA flow into a short: written for parts from the store, not for what lay idle for decades.`,
          ]
        : []),
    ],
  };
}

/** So many equal steps that a short passes no more than the rule allows at the first one. */
function stepsTo(
  rule: ReformingRule,
  seriesOhms: number,
  fullVolts: number,
  holdMinutes: number,
): ReformingStep[] {
  const last = { volts: fullVolts, minutes: holdMinutes };
  if (!rule.isRaisedInSteps) return [last];
  const stepVolts = (seriesOhms * (rule.mostMilliamperes ?? 1)) / 1000;
  const count = Math.max(5, Math.ceil(fullVolts / stepVolts - 1e-9));
  return Array.from({ length: count }, (_, index) =>
    index === count - 1 ? last : { volts: (fullVolts * (index + 1)) / count, minutes: null },
  );
}

function byStorage(months: number): string {
  if (months <= 12) return 'Up to a year in store: may be used as it is.';
  if (months <= 36) return 'Up to 3 years in store: test its leakage first.';
  if (months <= 120) return 'From 3 to 10 years in store: re-form it, then test it.';
  return 'Past the 10 years that the maker calls its useful shelf life: re-form it only for the record, and plan a replacement.';
}
