/** The part of the `edtf` package that `edtfRange.ts` uses; it brings no types of its own. */
declare module 'edtf' {
  interface Mask {
    /** 0 when no part of the date is marked. */
    value: number;
  }

  /** Instants are milliseconds since the epoch; `null` unknown, `Infinity` open. */
  export interface ParsedEdtf {
    type: 'Date' | 'Year' | 'Decade' | 'Century' | 'Season' | 'Interval' | 'Set' | 'List';
    min: number | null;
    max: number | null;
    year: number;
    /** Of a season or another part of a year: 21 to 41. */
    season: number;
    /** Digits of a year that count; NaN when it says nothing of them. */
    significant: number;
    /** Of a date: 1 year, 2 month, 3 day, 0 a time of day. */
    precision: number;
    uncertain?: Mask;
    approximate?: Mask;
    unspecified?: Mask;
    lower?: ParsedEdtf | number | null;
    upper?: ParsedEdtf | number | null;
    values: unknown[];
    /** Of a set: open towards the past or the future. */
    earlier?: boolean;
    later?: boolean;
  }

  function edtf(text: string): ParsedEdtf;
  // eslint-disable-next-line import-x/no-default-export -- the package is so.
  export { edtf as default };
}
