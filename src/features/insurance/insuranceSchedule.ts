import type { ApiContext } from '../../api/kit/apiContext.js';
import { sumInCurrency } from '../../domain/money/sumInCurrency.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { rateOnPaper } from '../rates/rateTable.reads.js';
import { shownSum } from '../rates/shownSum.js';
import { shownBasis } from '../standing/standingFacts.js';
import { openMoneyScale } from '../worth/moneyScale.js';
import { readNotedValues, readWorthSubjects, type NotedValue } from '../worth/worthFacts.reads.js';
import { presentStandard } from '../worth/presentStandard.js';
import type { InsuredItem } from './insurance.type.js';
import { checkScheduleOf } from './checkScheduleOf.js';
import {
  readCollectionName,
  readCovers,
  readScheduledItems,
  type ScheduleOf,
} from './schedule.reads.js';
import { scheduleCsv } from './scheduleCsv.js';

export type InsuredRow = InsuredItem & { id: string; itemId: string; coverDigest: string | null };

/** A schedule as it is shown, printed and sent. */
export async function insuranceSchedule(context: ApiContext, of: ScheduleOf) {
  const { reader } = context.database;
  await checkScheduleOf(reader, of);
  const scheduled = await readScheduledItems(reader, of);
  const ids = scheduled.map(({ itemId }) => itemId);
  const subjects = new Map((await readWorthSubjects(reader, ids)).map((one) => [one.itemId, one]));
  const owners = scheduled.flatMap(({ itemId, modelId }) => [
    itemId,
    ...(modelId ? [modelId] : []),
  ]);
  const notes = await readNotedValues(reader, [...new Set(owners)]);
  const covers = await readCovers(reader, ids);
  const items = scheduled.map((item): InsuredRow => {
    const subject = subjects.get(item.itemId);
    const standard = subject ? presentStandard(subject)[0] : 'NOT_WORKING';
    const ofModel = (notes.get(item.modelId ?? '') ?? []).filter(
      (note) => note.standard === standard,
    );
    const note = insuredValue(notes.get(item.itemId) ?? [], ofModel);
    const digest = covers.get(item.itemId) ?? null;
    return {
      id: item.itemId,
      itemId: item.itemId,
      inventoryNumber: item.inventoryNumber,
      what: item.modelName ?? item.name ?? 'not named',
      serialNumber: item.serialNumber,
      value: note && moneyAmount(Number(note.likelyMinorUnits), note.currency),
      valueBasis: note?.basis ?? null,
      standard: note?.standard ?? null,
      valuedOn: note?.valuedOn ?? null,
      source: note?.source ?? null,
      picturePath: digest === null ? null : `/attachments/${digest}/picture?size=medium`,
      coverDigest: digest,
    };
  });
  const scale = await openMoneyScale(context);
  const values = items.flatMap(({ value }) => value ?? []);
  const sum = sumInCurrency(values, scale.currency, scale.table);
  const unvalued = items.filter(({ value }) => value === null);
  return {
    id: 'schedule',
    collectionName: await readCollectionName(reader),
    part: partInWords(of),
    items,
    total: shownSum(sum, values.length, context.nowMs),
    ratesOnPaper: sum.kind === 'SUM' ? sum.usedRates.map(rateOnPaper) : [],
    unvalued: unvalued.map(({ inventoryNumber }) => inventoryNumber),
    csv: scheduleCsv(items),
    pdfPath: pathOf(of),
    basis: shownBasis(
      {
        method:
          'For each item in hand or lent the newest replacement value noted of it, else of its model at its present condition, else the newest fair-market value in the same order. Values stand as noted, with their dates; none is carried on or estimated.',
        counted: [
          { what: 'items', count: items.length },
          { what: 'of them with a value', count: values.length },
          { what: 'of them with a picture', count: covers.size },
        ],
      },
      context.nowMs,
      unvalued.length === 0 ? [] : ['Items without a value are listed and add nothing to the sum.'],
    ),
  };
}

/** Both lists have the newest first. */
function insuredValue(own: readonly NotedValue[], ofModel: readonly NotedValue[]) {
  for (const basis of ['REPLACEMENT', 'FAIR_MARKET'] as const) {
    const note =
      own.find((one) => one.basis === basis) ?? ofModel.find((one) => one.basis === basis);
    if (note) return note;
  }
  return null;
}

function partInWords({ numbers, placeName }: ScheduleOf): string {
  const chosen = numbers === null ? '' : ', chosen items';
  return placeName === null ? chosen : `${chosen}, in ${placeName}`;
}

function pathOf({ numbers, placeName }: ScheduleOf): string {
  const query = new URLSearchParams();
  if (numbers !== null) query.set('items', numbers.join(','));
  if (placeName !== null) query.set('place', placeName);
  const asked = query.toString();
  return `/download/insurance-schedule.pdf${asked === '' ? '' : `?${asked}`}`;
}
