import type { MoneyInput } from '../../api/kit/money.type.js';
import type { Checklist } from '../../db/checklist.js';
import type { RowChanges } from '../../db/changeRow.js';
import { readMoney } from '../money/readMoney.js';
import type { ProjectEntity } from './project.entity.js';

// Decades of full-time work: more is a slip of the keyboard. Our own choice, no source.
const mostHours = 100_000;

interface Ceilings {
  ceiling?: MoneyInput | null;
  ceilingHours?: number | null;
}

/** Ceilings as a person gave them; what is wrong goes to the checklist. */
export function readCeilings(check: Checklist, input: Ceilings): RowChanges<ProjectEntity> {
  const { ceiling, ceilingHours } = input;
  return {
    ...(ceiling !== undefined && moneyOf(check, ceiling)),
    ...(ceilingHours !== undefined && { ceilingMinutes: minutesOf(check, ceilingHours) }),
  };
}

function moneyOf(check: Checklist, ceiling: MoneyInput | null): RowChanges<ProjectEntity> {
  if (ceiling === null) return { ceilingMinorUnits: null, ceilingCurrency: null };
  const { minorUnits, currency } = readMoney(check, ceiling, ['ceiling']);
  check.that(minorUnits >= 0, 'A ceiling cannot be below zero.', ['ceiling', 'amount']);
  return { ceilingMinorUnits: minorUnits, ceilingCurrency: currency };
}

function minutesOf(check: Checklist, hours: number | null): number | null {
  if (hours === null) return null;
  const isUsable = hours >= 0 && hours <= mostHours;
  check.that(isUsable, 'Give the most hours as a number from 0 to 100,000.', ['ceilingHours']);
  return isUsable ? Math.round(hours * 60) : null;
}
