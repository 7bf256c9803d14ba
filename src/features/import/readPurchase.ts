import { currencyExponent } from '../money/currencyExponent.js';
import type { ImportOptions } from './importOptions.js';
import type { Purchase } from './itemDraft.js';
import type { ListField } from './listField.js';
import type { ListRow } from './listRow.js';
import { readListAmount } from './readListAmount.js';
import { readListDate, whyUnclear } from './readListDate.js';

const parts: readonly ListField[] = ['ACQUIRED_ON', 'PRICE', 'CURRENCY', 'SELLER', 'VENUE'];

/** How an item came in, as far as its row says. */
export type ReadPurchase = { purchase: Purchase } | { purchase: null; forTheNote: string[] };

/**
 * A purchase needs a day and a price. Without a price, what the row says of it is kept as lines
 * for the note; a price without a day is a problem, for it would be lost from the sums.
 */
export function readPurchase(row: ListRow, options: ImportOptions): ReadPurchase {
  const day = readDay(row, options);
  const price = row.text('PRICE');
  const seller = row.word('SELLER');
  const venue = row.word('VENUE');
  if (price === null) {
    const forTheNote = parts.flatMap((field) => {
      const text = row.text(field);
      return text === null || field === 'CURRENCY' ? [] : [`${row.heading(field) ?? ''}: ${text}`];
    });
    return { purchase: null, forTheNote };
  }
  const currency = (row.text('CURRENCY') ?? options.currency)?.toUpperCase() ?? null;
  const priceMinorUnits = readPrice(row, price, currency, options);
  if (row.text('ACQUIRED_ON') === null) {
    row.refuse(
      'PRICE',
      'A price needs the day it was paid: fill it in, or map the price to NOTE to keep it as a remark.',
    );
  }
  if (day === null || priceMinorUnits === null || currency === null) {
    return { purchase: null, forTheNote: [] };
  }
  return { purchase: { ...day, priceMinorUnits, currency, seller, venue } };
}

function readDay(
  row: ListRow,
  options: ImportOptions,
): Pick<Purchase, 'acquiredOn' | 'note'> | null {
  const text = row.text('ACQUIRED_ON');
  if (text === null) return null;
  const written = readListDate(text, options.dateOrder, options.latestDay);
  switch (written.kind) {
    case 'date':
      if (written.date <= options.latestDay) return { acquiredOn: written.date, note: null };
      row.refuse('ACQUIRED_ON', `${written.date} is still to come.`);
      return null;
    case 'partial': {
      if (row.text('PRICE') === null) return null;
      if (!options.takesFirstDay) {
        row.refuse(
          'ACQUIRED_ON',
          `“${text}” names no day, and a price counts as of a day. Write the day, or ask for the first day of the year or month to be taken.`,
        );
        return null;
      }
      const acquiredOn = `${written.edtf}-01-01`.slice(0, 10);
      return { acquiredOn, note: `Day not known; the list says “${text}”.` };
    }
    case 'ambiguous':
      row.refuse('ACQUIRED_ON', whyUnclear(written, text));
      return null;
    case 'unreadable':
      row.refuse('ACQUIRED_ON', written.why);
      return null;
  }
}

function readPrice(
  row: ListRow,
  price: string,
  currency: string | null,
  { decimalMark }: ImportOptions,
): number | null {
  if (currency === null) {
    row.refuse(
      'PRICE',
      'In which currency? Give it in a column of its own, or for the whole list.',
    );
    return null;
  }
  const exponent = currencyExponent(currency);
  if (exponent === null) {
    const message = `“${currency}” is not a currency code of ISO 4217, such as EUR or JPY.`;
    row.refuse(row.text('CURRENCY') === null ? 'PRICE' : 'CURRENCY', message);
    return null;
  }
  const amount = readListAmount(price, exponent, decimalMark);
  if (amount.kind === 'amount' && amount.minorUnits >= 0) return amount.minorUnits;
  row.refuse('PRICE', amount.kind === 'refused' ? amount.why : 'A price cannot be below zero.');
  return null;
}
