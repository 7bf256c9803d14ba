/** A calendar day without a clock or zone, 'YYYY-MM-DD', years 0001 to 9999, Gregorian. */
export type LocalDate = string;
