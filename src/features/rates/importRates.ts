import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { insertRows } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { compareDecimals } from '../../domain/decimal/compareDecimals.js';
import { checkRate, type RateDraft } from './checkRate.js';
import { ExchangeRateEntity } from './exchangeRate.entity.js';
import type { ImportRatesInput } from './rate.inputs.js';
import { readSmallTable } from './readSmallTable.js';

const path = ['csv'];

/** Rates from a table: all of them or none. @returns the ids of those that are new or changed. */
export async function importRates(work: UnitOfWork, input: ImportRatesInput): Promise<string[]> {
  const check = new Checklist(work);
  const source = check.words(input.source, ['source']);
  const rows = readSmallTable(check, input.csv, ['date', 'from', 'to', 'rate'], path);
  const drafts = new Map<string, { draft: RateDraft; line: number }>();
  for (const { line, cells } of rows) {
    const { date = '', from = '', to = '', rate = '' } = cells;
    const draft = { fromCurrency: from, toCurrency: to, ratedOn: date, rate };
    checkRate(check, draft, work.now, () => path, `Line ${line}: `);
    const key = keyOf(draft);
    const other = drafts.get(key);
    if (other) {
      check.refuse(`Line ${line}: line ${other.line} has a rate for the same day already.`, path);
    }
    drafts.set(key, { draft, line });
  }
  check.done();
  await oneAtATime(work, 'exchange rates');
  const known = new Map(
    (await work.manager.find(ExchangeRateEntity)).map((row) => [keyOf(row), row]),
  );
  const fresh: RateDraft[] = [];
  const replaced: { row: ExchangeRateEntity; rate: string }[] = [];
  for (const [key, { draft, line }] of drafts) {
    const row = known.get(key);
    if (!row) fresh.push(draft);
    else if (compareDecimals(row.rate, draft.rate) !== 0 || row.struckAt !== null) {
      replaced.push({ row, rate: draft.rate });
      check.that(
        input.isReplacing,
        `Line ${line}: ${draft.ratedOn} is written down as ${row.rate}; say that you mean to replace it.`,
        path,
      );
    }
  }
  check.done();
  for (const { row, rate } of replaced) {
    await changeRow(work, ExchangeRateEntity, row.id, null, { rate, source, struckAt: null });
  }
  const added = await insertRows(
    work,
    ExchangeRateEntity,
    fresh.map((draft) => ({ ...draft, source, struckAt: null })),
  );
  return [...replaced.map(({ row }) => row.id), ...added.map(({ id }) => id)];
}

const keyOf = ({ fromCurrency, toCurrency, ratedOn }: Omit<RateDraft, 'rate'>): string =>
  `${fromCurrency} ${toCurrency} ${ratedOn}`;
