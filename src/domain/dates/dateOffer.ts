/** A reading of a date in people's own words, to be confirmed by a person. */
export interface DateOffer {
  /** EDTF (ISO 8601-2). */
  readonly edtf: string;
  /** What it was read as, in words. */
  readonly readAs: string;
}

/** A date of one sort, with its first and last year, month or day as EDTF level 0. */
export interface DatePhrase extends DateOffer {
  /** Null where the borders are not tied to months, as those of a season. */
  readonly first: string | null;
  readonly last: string | null;
}
