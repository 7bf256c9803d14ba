import { Checklist } from '../../db/checklist.js';
import { insertRow, insertRows } from '../../db/insertRow.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { readSpent } from '../money/readSpent.js';
import { chooseParty } from '../parties/chooseParty.js';
import { ClaimEntity } from '../provenance/claim.entity.js';
import { AcquisitionEntity } from './acquisition.entity.js';
import type { RecordAcquisitionInput } from './acquisition.inputs.js';
import { checkLotItems } from './checkLotItems.js';
import { checkNewItems } from './checkNewItems.js';
import { checkSpread } from './checkSpread.js';
import { draftExtraCost } from './draftExtraCost.js';
import { draftLotClaims } from './draftLotClaims.js';
import { draftLotLine } from './draftLotLine.js';
import { ExtraCostEntity } from './extraCost.entity.js';
import { keepLotLines } from './keepLotLines.js';
import { whyNoNegativePrice } from './whyNoNegativePrice.js';

const mostLines = 500;
const mostBeside = 100;

/** A lot comes in: what was in it, what it cost, and what the seller said. All or nothing. */
export async function recordAcquisition(
  work: UnitOfWork,
  input: RecordAcquisitionInput,
): Promise<string> {
  const check = new Checklist(work);
  const source = rowSourceInWork(work);
  const atMost = (list: unknown[], most: number, field: string): void =>
    check.that(list.length <= most, `${most} is the most at once; add the rest later.`, [field]);
  atMost(input.lines, mostLines, 'lines');
  atMost(input.extraCosts, mostBeside, 'extraCosts');
  atMost(input.claims, mostBeside, 'claims');
  check.done();

  checkPastDay(check, input.acquiredOn, work.now, ['acquiredOn']);
  const keepOtherParty = await chooseParty(work, check, input.otherParty, ['otherParty']);
  const venue = typeof input.venue === 'string' ? check.words(input.venue, ['venue']) : null;
  const note = check.text(input.note, ['note']);
  const price = readSpent(check, input.price, ['price'], whyNoNegativePrice);
  const extraCosts = input.extraCosts.map((cost, index) =>
    draftExtraCost(check, cost, ['extraCosts', String(index)]),
  );
  const pathOf = (line: number) => ['lines', String(line)];
  const lines = input.lines.map((line, index) =>
    draftLotLine(check, line, price.currency, pathOf(index)),
  );
  await checkLotItems(
    source,
    check,
    lines.map((line) => line.itemId),
    pathOf,
  );
  await checkNewItems(source, check, lines, pathOf);
  checkSpread(check, { spreadMethod: input.spreadMethod, lines }, pathOf);
  const claims = draftLotClaims(check, input.claims, lines);
  check.done();

  const otherPartyId = await keepOtherParty();
  const { id } = await insertRow(work, AcquisitionEntity, {
    acquiredOn: input.acquiredOn,
    otherPartyId,
    venue,
    priceMinorUnits: price.minorUnits,
    currency: price.currency,
    spreadMethod: input.spreadMethod,
    note,
  });
  const kept = await keepLotLines(work, id, lines, 0);
  const costs = extraCosts.map((cost) => ({ ...cost, acquisitionId: id }));
  if (costs.length > 0) await insertRows(work, ExtraCostEntity, costs);
  const said = claims.map(({ line, statement }) => ({
    itemId: line === null ? null : (kept[line]?.itemId ?? null),
    acquisitionId: id,
    saidById: otherPartyId,
    saidOn: input.acquiredOn,
    statement,
  }));
  if (said.length > 0) await insertRows(work, ClaimEntity, said);
  return id;
}
