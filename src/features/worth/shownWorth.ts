import type { Standard } from '../../domain/worth/standards.js';
import type { ValueAtStandard } from '../../domain/worth/valueAtStandard.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { shownBasis } from '../standing/standingFacts.js';
import { ConditionStandard } from './conditionStandard.js';
import type { ItemWorth, ValueInterval } from './worth.type.js';
import { netOfParts, ownHourRate, valueOf, type ReckonedItem } from './worthOfItems.js';

/** The worth of an item as the API shows it. */
export function shownWorth(item: ReckonedItem, nowMs: number): ItemWorth {
  const { present, subject, parts, terms, scale } = item;
  const { currency } = scale;
  const at = (standard: Standard) => interval(standard, valueOf(item, standard), currency);
  const target =
    subject.target === null || subject.target === 'PARTS_DONOR' ? null : subject.target;
  const byStandard = Object.values(ConditionStandard).flatMap((standard) => at(standard) ?? []);
  const asParts = partsInterval(item);
  const isTimePriced = ownHourRate(terms, scale) !== null;
  return {
    currency,
    presentStandard: present,
    asItStands: at(present),
    targetStandard: target,
    atTarget: target === null ? null : at(target),
    byStandard,
    asParts,
    problems: scale.problems(),
    basis: shownBasis(
      {
        method:
          'Fair-market value notes of the item, else of its model, carried to today by the price index of their currency; between standards by even ratio. The interval is the tenth to the ninetieth percentile of a lognormal about the median, wider with fewer and older notes. As parts: prices noted for the parts fitted now, less selling costs and own time.',
        counted: [
          { what: 'value notes', count: item.values.length },
          { what: 'parts fitted, of a known type', count: parts.partCount },
          { what: 'of them with a noted price', count: parts.pricedCount },
        ],
      },
      nowMs,
      [
        item.presentHow,
        `${terms.usablePartsPercent} of a hundred parts prove fit to sell; selling takes ${terms.saleCostPercent} percent and ${terms.partEffortMinutes} minutes a part.`,
        ...(isTimePriced ? [] : ['Own time has no price here.']),
        ...item.remarks,
        ...scale.ratesInWords(),
      ],
    ),
  };
}

const interval = (
  standard: Standard,
  value: ValueAtStandard | null,
  currency: string,
): ValueInterval | null =>
  value && {
    standard,
    low: rounded(value.low, currency),
    likely: rounded(value.likely, currency),
    high: rounded(value.high, currency),
    how: value.how,
    noteCount: value.noteCount,
  };

function partsInterval(item: ReckonedItem): ValueInterval | null {
  const { gross, pricedCount } = item.parts;
  if (pricedCount === 0) return null;
  const net = netOfParts(item);
  const at = (probability: number) => rounded(net(gross.at(probability)), item.scale.currency);
  const [low, likely, high] = [at(0.1), at(0.5), at(0.9)];
  return { standard: null, low, likely, high, how: null, noteCount: pricedCount };
}

export const rounded = (minorUnits: number, currency: string) =>
  moneyAmount(Math.round(minorUnits) || 0, currency);
