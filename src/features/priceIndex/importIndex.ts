import { Checklist } from '../../db/checklist.js';
import { insertRow, insertRows } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { parseDecimal } from '../../domain/decimal/parseDecimal.js';
import { currencyExponent } from '../money/currencyExponent.js';
import { readSmallTable } from '../rates/readSmallTable.js';
import { PriceIndexEntity, PriceIndexPointEntity } from './priceIndex.entity.js';
import type { ImportIndexInput } from './priceIndex.inputs.js';

const path = ['csv'];
const longestValue = 40;

/** A price index whole or not at all; from then on it carries amounts of its currency. */
export async function importIndex(work: UnitOfWork, input: ImportIndexInput): Promise<string> {
  const check = new Checklist(work);
  const name = check.words(input.name, ['name']);
  const source = check.words(input.source, ['source']);
  const isCurrency = currencyExponent(input.currency) !== null;
  check.that(isCurrency, `"${input.currency}" is not a currency of ISO 4217.`, ['currency']);
  const points = new Map<string, string>();
  for (const { line, cells } of readSmallTable(check, input.csv, ['period', 'value'], path)) {
    const { period = '', value = '' } = cells;
    const isPeriod = /^\d{4}(-(0[1-9]|1[0-2]))?$/.test(period);
    check.that(
      isPeriod,
      `Line ${line}: “${period.slice(0, 20)}” is neither a year nor a month.`,
      path,
    );
    const figure = value.length > longestValue ? null : parseDecimal(value);
    check.that(
      figure !== null && figure.coefficient > 0n,
      `Line ${line}: “${value.slice(0, longestValue)}” is not a number above zero.`,
      path,
    );
    check.that(!points.has(period), `Line ${line}: ${period} is there twice.`, path);
    points.set(period, value);
  }
  check.done();
  const { currency } = input;
  const row = { name, currency, source, struckAt: null };
  const { id } = await insertRow(work, PriceIndexEntity, row);
  await insertRows(
    work,
    PriceIndexPointEntity,
    [...points].map(([period, value]) => ({ indexId: id, period, value })),
  );
  return id;
}
