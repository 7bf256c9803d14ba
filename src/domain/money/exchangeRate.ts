/** What one unit of a currency was in another on a day. */
export interface ExchangeRate {
  readonly id: string;
  readonly fromCurrency: string;
  readonly toCurrency: string;
  /** Units of `toCurrency` for one unit of `fromCurrency`: an exact decimal above zero. */
  readonly rate: string;
  /** ISO 8601 date. */
  readonly ratedOn: string;
  /** Who says so, where that is known. */
  readonly source?: string;
}
