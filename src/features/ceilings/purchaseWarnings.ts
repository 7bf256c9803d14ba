import { Field, type ClassType } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import type { MoneyInput } from '../../api/kit/money.type.js';
import { parseAmount } from '../../domain/money/parseAmount.js';
import { exponentOf } from '../rates/rateTable.reads.js';
import { CeilingStanding } from './ceilings.type.js';
import { ceilingsAfter } from './ceilingsAfter.js';

/** Adds to the payload of a purchase what it warns of. */
export function withWarnings(payload: ClassType): ClassType {
  Field(() => [CeilingStanding], {
    description:
      'Ceilings that this has broken, with what would have to give; it is kept all the same.',
  })(payload.prototype, 'warnings');
  return payload;
}

interface RecordedPurchase {
  amounts: readonly MoneyInput[];
  day: string;
  projectId: string | null;
}

/** The answer of a purchase that was recorded, with its warnings; of one that was refused, none. */
export async function warned<Answer extends Record<string, unknown>>(
  { database, nowMs }: ApiContext,
  answer: Answer,
  isRecorded: boolean,
  purchase: () => RecordedPurchase,
) {
  if (!isRecorded) return { ...answer, warnings: [] };
  const { amounts, day, projectId } = purchase();
  const moneys = amounts.flatMap(({ amount, currency }) => {
    const parsed = parseAmount(amount, exponentOf(currency));
    return parsed.kind === 'amount' ? [{ minorUnits: parsed.minorUnits, currency }] : [];
  });
  const standings = await ceilingsAfter(
    database.reader,
    { amounts: moneys, day, projectId, isRecorded: true },
    nowMs,
  );
  return { ...answer, warnings: standings.filter(({ warning }) => warning !== null) };
}
