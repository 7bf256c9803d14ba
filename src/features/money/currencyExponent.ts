import currencyCodes from 'currency-codes';

/**
 * Decimals of a currency by ISO 4217, or null when the code is not in its list.
 * Source: the list that the `currency-codes` package carries.
 */
export const currencyExponent = (currency: string): number | null =>
  currencyCodes.code(currency)?.digits ?? null;
