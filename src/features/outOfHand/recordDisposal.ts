import { Checklist } from '../../db/checklist.js';
import { insertRow, insertRows } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { globalId } from '../../api/kit/globalId.js';
import { draftExtraCost } from '../acquisitions/draftExtraCost.js';
import { retireItem } from '../items/retireItem.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { chooseParty } from '../parties/chooseParty.js';
import { DisposalCostEntity, DisposalEntity, DisposalLineEntity } from './disposal.entity.js';
import type { RecordDisposalInput } from './disposal.inputs.js';
import { draftDisposalLines } from './draftDisposalLines.js';
import { readPrice } from './readPrice.js';

/** A lot goes out for good. Its items leave the collection; everything on record of them stays. */
export async function recordDisposal(
  work: UnitOfWork,
  input: RecordDisposalInput,
): Promise<string> {
  await oneAtATime(work, 'out of hand');
  const check = new Checklist(work);
  checkPastDay(check, input.disposedOn, work.now, ['disposedOn']);
  const price = readPrice(check, input.price, ['price']);
  const lines = await draftDisposalLines(work, check, input.lines, price);
  const costs = input.costs.map((cost, index) =>
    draftExtraCost(check, cost, ['costs', String(index)]),
  );
  const venue = typeof input.venue === 'string' ? check.words(input.venue, ['venue']) : null;
  const note = check.text(input.note, ['note']);
  const keepParty = await chooseParty(work, check, input.toParty, ['toParty']);
  check.done();
  const { kind, disposedOn } = input;
  const { id } = await insertRow(work, DisposalEntity, {
    kind,
    disposedOn,
    toPartyId: await keepParty(),
    venue,
    priceMinorUnits: price.minorUnits,
    currency: price.currency,
    note,
  });
  await insertRows(
    work,
    DisposalLineEntity,
    lines.map(({ itemId, priceMinorUnits }, ordinal) => ({
      disposalId: id,
      ordinal,
      itemId,
      priceMinorUnits,
    })),
  );
  if (costs.length > 0) {
    const rows = costs.map((cost) => ({ ...cost, disposalId: id }));
    await insertRows(work, DisposalCostEntity, rows);
  }
  for (const { itemId, typeName, version } of lines) {
    const reason = `${kind.charAt(0)}${kind.slice(1).toLowerCase()} on ${disposedOn}.`;
    await retireItem(work, { id: globalId(typeName, itemId), version, reason });
  }
  return id;
}
