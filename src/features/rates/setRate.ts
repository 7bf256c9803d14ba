import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkRate } from './checkRate.js';
import { ExchangeRateEntity } from './exchangeRate.entity.js';
import type { SetRateInput } from './rate.inputs.js';

export async function setRate(work: UnitOfWork, input: SetRateInput): Promise<string> {
  const check = new Checklist(work);
  checkRate(check, input, work.now, (field) => [field]);
  const source = check.words(input.source, ['source']);
  check.done();
  await oneAtATime(work, 'exchange rates');
  const { fromCurrency, toCurrency, ratedOn, rate } = input;
  const key = { fromCurrency, toCurrency, ratedOn };
  const known = await work.manager.findOneBy(ExchangeRateEntity, key);
  const struckAt = input.isStruck === true ? work.now : null;
  if (!known) {
    if (typeof input.version === 'number') throw Refusal.notFound('exchange rate', ['ratedOn']);
    return (await insertRow(work, ExchangeRateEntity, { ...key, rate, source, struckAt })).id;
  }
  if (typeof input.version !== 'number') {
    throw Refusal.conflict(
      `The rate of ${ratedOn} is written down as ${known.rate} (${known.source}). To replace it, give its version, ${known.version}.`,
      ['ratedOn'],
    );
  }
  await changeRow(work, ExchangeRateEntity, known.id, input.version, { rate, source, struckAt });
  return known.id;
}
