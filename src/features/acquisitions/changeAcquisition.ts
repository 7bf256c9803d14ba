import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { readSpent } from '../money/readSpent.js';
import { chooseParty } from '../parties/chooseParty.js';
import { AcquisitionEntity } from './acquisition.entity.js';
import type { ChangeAcquisitionInput } from './acquisition.inputs.js';
import { changeExtraCosts } from './changeExtraCosts.js';
import { changeLotLines } from './changeLotLines.js';
import { checkSpread } from './checkSpread.js';
import { readLots } from './lots.reads.js';
import { whyNoNegativePrice } from './whyNoNegativePrice.js';

/** Corrects what is known of a lot, its lines and its extra costs. All or nothing. */
export async function changeAcquisition(
  work: UnitOfWork,
  input: ChangeAcquisitionInput,
): Promise<string> {
  const id = recordId('Acquisition', input.id);
  await oneAtATime(work, `lot ${id}`);
  const [lot] = await readLots(rowSourceInWork(work), 'lot', [id]);
  if (!lot) throw Refusal.notFound('acquisition');
  const check = new Checklist(work);
  const { acquiredOn, otherParty, venue, note } = input;
  if (acquiredOn) checkPastDay(check, acquiredOn, work.now, ['acquiredOn']);
  const keepOtherParty = await chooseParty(work, check, otherParty, ['otherParty']);
  const place = typeof venue === 'string' ? check.words(venue, ['venue']) : venue;
  const text = note === undefined ? undefined : check.text(note, ['note']);
  const price = input.price
    ? readSpent(check, input.price, ['price'], whyNoNegativePrice)
    : lot.price;
  const spreadMethod = input.spreadMethod ?? lot.spreadMethod;
  const { lines, keepLines } = await changeLotLines(work, check, lot, input.lines, price.currency);
  const keepCosts = await changeExtraCosts(work, check, id, input.extraCosts);
  const given = new Map(input.lines.map((line, index) => [line.id, index]));
  checkSpread(check, { spreadMethod, lines }, (line) => {
    const index = given.get(`LotLine_${lines[line]?.id ?? ''}`);
    return index === undefined ? null : ['lines', String(index)];
  });
  check.done();
  const otherPartyId = otherParty === undefined ? undefined : await keepOtherParty();
  await changeRow(work, AcquisitionEntity, id, input.version, {
    ...(acquiredOn && { acquiredOn }),
    ...(otherPartyId !== undefined && { otherPartyId }),
    ...(place !== undefined && { venue: place }),
    ...(text !== undefined && { note: text }),
    priceMinorUnits: price.minorUnits,
    currency: price.currency,
    spreadMethod,
  });
  await keepLines();
  await keepCosts();
  return id;
}
