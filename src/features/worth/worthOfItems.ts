import type { ApiContext } from '../../api/kit/apiContext.js';
import { groupedBy } from '../../db/groupedBy.js';
import { indexedAmount } from '../../domain/worth/indexedAmount.js';
import { notedPriceAmount } from '../../domain/worth/notedPriceAmount.js';
import { partsWorth, type HarvestGroup } from '../../domain/worth/partsWorth.js';
import type { Standard } from '../../domain/worth/standards.js';
import { timesAmount, type UncertainAmount } from '../../domain/worth/uncertainAmount.js';
import { valueAtStandard, type StandardValue } from '../../domain/worth/valueAtStandard.js';
import { indexInWords } from '../priceIndex/indexInWords.js';
import { readPriceIndexes, type LoadedIndex } from '../priceIndex/priceIndexes.reads.js';
import { readNotedPrices } from '../prices/notedPrices.reads.js';
import { openMoneyScale, type MoneyScale } from './moneyScale.js';
import { presentStandard } from './presentStandard.js';
import type { Terms } from './usualTerms.js';
import {
  readFittedParts,
  readNotedValues,
  readWorthSubjects,
  readWorthTerms,
  type NotedValue,
  type WorthSubject,
} from './worthFacts.reads.js';

/** Everything that is reckoned of one item's worth, in minor units of the home currency. */
export interface ReckonedItem {
  subject: WorthSubject;
  present: Standard;
  presentHow: string;
  values: StandardValue[];
  parts: { gross: UncertainAmount; partCount: number; pricedCount: number };
  terms: Terms;
  scale: MoneyScale;
  /** Indexes used, and what could not be carried on, as sentences. */
  remarks: string[];
}

/** The worth of items, in a fixed number of statements. */
export async function reckonItems(
  context: ApiContext,
  itemIds: readonly string[],
): Promise<Map<string, ReckonedItem>> {
  const { reader } = context.database;
  const day = new Date(context.nowMs).toISOString().slice(0, 10);
  const subjects = await readWorthSubjects(reader, itemIds);
  const owners = subjects.flatMap(({ itemId, modelId }) => [itemId, modelId ?? []].flat());
  const notes = await readNotedValues(reader, [...new Set(owners)]);
  const fitted = groupedBy(await readFittedParts(reader, itemIds), ({ itemId }) => itemId);
  const types = new Set([...fitted.values()].flat().map(({ partTypeId }) => partTypeId));
  const prices = await readNotedPrices(reader, 'part_type_id', [...types]);
  const indexes = await readPriceIndexes(reader);
  const terms = await readWorthTerms(reader);
  const firstScale = await openMoneyScale(context);
  const reckoned = subjects.map((subject): ReckonedItem => {
    const scale = firstScale.fresh();
    const remarks = new Set<string>();
    const own = fairNotes(notes.get(subject.itemId));
    const ofModel = fairNotes(notes.get(subject.modelId ?? '')).filter(
      ({ standard }) => !own.some((note) => note.standard === standard),
    );
    const values = [...own, ...ofModel].flatMap(
      (note) => carried(note, day, indexes, scale, remarks) ?? [],
    );
    const groups: HarvestGroup[] = [];
    const parts = fitted.get(subject.itemId) ?? [];
    let pricedCount = 0;
    for (const { partTypeId, count } of parts) {
      const price = notedPriceAmount(prices.get(partTypeId) ?? [], day);
      const factor = price && scale.factor(price.currency);
      if (!price || factor === null) continue;
      pricedCount += Number(count);
      groups.push({ count: Number(count), price: timesAmount(price.amount, factor) });
    }
    const partCount = parts.reduce((sum, { count }) => sum + Number(count), 0);
    const gross = partsWorth(groups, terms.usablePartsPercent / 100);
    const [present, presentHow] = presentStandard(subject);
    return {
      subject,
      present,
      presentHow,
      values,
      parts: { gross, partCount, pricedCount },
      terms,
      scale,
      remarks: [...remarks],
    };
  });
  return new Map(reckoned.map((one) => [one.subject.itemId, one]));
}

const fairNotes = (notes: readonly NotedValue[] | undefined): NotedValue[] =>
  (notes ?? []).filter(({ basis }) => basis === 'FAIR_MARKET');

/** A note in today's money of the home currency: first by the index of its own, then by a rate. */
function carried(
  note: NotedValue,
  day: string,
  indexes: ReadonlyMap<string, LoadedIndex>,
  scale: MoneyScale,
  remarks: Set<string>,
): StandardValue | null {
  const factor = scale.factor(note.currency);
  if (factor === null) return null;
  const index = indexes.get(note.currency);
  const likely = index && indexedAmount(note.likelyMinorUnits, note.valuedOn, day, index.points);
  if (index && likely) remarks.add(indexInWords(index, likely));
  else remarks.add(`Values in ${note.currency} stand as noted: no price index reaches them.`);
  const times = (factor * (likely?.minorUnits ?? note.likelyMinorUnits)) / note.likelyMinorUnits;
  const scaled = (minorUnits: number | null) => (minorUnits === null ? null : minorUnits * times);
  return {
    standard: note.standard,
    low: scaled(note.lowMinorUnits),
    likely: note.likelyMinorUnits * times,
    high: scaled(note.highMinorUnits),
    ageDays: (Date.parse(day) - Date.parse(note.valuedOn)) / 86_400_000,
  };
}

/** What the parts bring after selling costs and the owner's time; may be below zero. */
export function netOfParts(item: ReckonedItem): (gross: number) => number {
  const { terms, scale, parts } = item;
  const kept = 1 - terms.saleCostPercent / 100;
  const sold = (parts.pricedCount * terms.usablePartsPercent) / 100;
  const rate = ownHourRate(terms, scale) ?? 0;
  const effort = ((sold * terms.partEffortMinutes) / 60) * rate;
  return (gross) => gross * kept - effort;
}

/** Minor units of the home currency for an hour of own time; null where it has no price. */
export function ownHourRate(terms: Terms, scale: MoneyScale): number | null {
  if (terms.hourRateMinorUnits === null || terms.hourRateCurrency === null) return null;
  const factor = scale.factor(terms.hourRateCurrency);
  return factor === null ? null : terms.hourRateMinorUnits * factor;
}

export const valueOf = ({ values }: ReckonedItem, standard: Standard) =>
  valueAtStandard(values, standard);
