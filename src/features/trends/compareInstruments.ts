import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { nameKey } from '../../domain/nameKey.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { checkFactor } from './checkFactor.js';
import { InstrumentComparisonEntity } from './instrumentComparison.entity.js';
import type { CompareInstrumentsInput } from './instrumentComparison.inputs.js';

export async function compareInstruments(
  work: UnitOfWork,
  input: CompareInstrumentsInput,
): Promise<string> {
  const check = new Checklist(work);
  const quantity = nameKey(check.words(input.quantity, ['quantity'], 80));
  const fromInstrument = check.words(input.fromInstrument, ['fromInstrument']);
  const toInstrument = check.words(input.toInstrument, ['toInstrument']);
  check.that(
    nameKey(fromInstrument) !== nameKey(toInstrument),
    'An instrument needs no comparison with itself: name another one.',
    ['toInstrument'],
  );
  checkFactor(check, input.factor, ['factor']);
  checkPastDay(check, input.comparedOn, work.now, ['comparedOn']);
  const note = check.text(input.note, ['note']);
  check.done();
  const { factor, comparedOn } = input;
  const values = { quantity, fromInstrument, toInstrument, factor, comparedOn, note };
  return (await insertRow(work, InstrumentComparisonEntity, values)).id;
}
