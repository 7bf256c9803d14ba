import { newKey } from '../../api/newKey.js';
import type { AccessoryRole, SpreadMethod } from '../../gql/graphql.js';
import { todayHere } from '../../locale/todayHere.js';

export interface BuyLine {
  key: string;
  what: 'RIG' | 'ACCESSORY' | 'KNOWN' | 'SUNDRIES';
  role: AccessoryRole;
  number: string;
  name: string;
  /** Maker and designation as typed. */
  model: string;
  serialNumber: string;
  /** Its share or value, as typed. */
  weight: string;
}

export interface BuyCost {
  key: string;
  description: string;
  amount: string;
  currency: string;
}

export interface BuyClaim {
  key: string;
  /** The line that it is about; empty for the lot. */
  lineKey: string;
  statement: string;
}

export interface BuyDraft {
  acquiredOn: string;
  venue: string;
  from: string;
  price: string;
  /** Null until one is typed: then the currency of the collection. */
  currency: string | null;
  spreadMethod: SpreadMethod;
  lines: readonly BuyLine[];
  costs: readonly BuyCost[];
  claims: readonly BuyClaim[];
  note: string;
  /** When it was first sent: a lot that is there since then with the same terms is this one. */
  sentAt: string | null;
}

export const newLine = (): BuyLine => ({
  key: newKey(),
  what: 'RIG',
  role: 'POWER_SUPPLY',
  number: '',
  name: '',
  model: '',
  serialNumber: '',
  weight: '',
});

export const newBuy = (): BuyDraft => ({
  acquiredOn: todayHere(),
  venue: '',
  from: '',
  price: '',
  currency: null,
  spreadMethod: 'EQUAL_SHARES',
  lines: [newLine()],
  costs: [],
  claims: [],
  note: '',
  sentAt: null,
});
