export interface Formats {
  /** 12.5 h, with one digit below 100 hours. */
  hours: (hours: number) => string;
  /** 45 min; from two hours on in hours (11 h). */
  minutes: (minutes: number) => string;
  /** A share of 0 to 1 as a whole percentage. */
  share: (share: number) => string;
  number: (value: number, digits?: number) => string;
  money: (money: { amount: string; currency: string }) => string;
  /** A day from an instant, in the zone given or the browser's. */
  day: (instant: string, zone?: string) => string;
  /** Day and minute, with the zone's short name. */
  minute: (instant: string, zone?: string) => string;
  /** A calendar month (2026-03). */
  month: (month: string) => string;
  /** A calendar day (2026-03-01), which has no zone. */
  localDay: (day: string) => string;
}

/** @param locale a BCP 47 tag */
export function formatsOf(locale: string): Formats {
  const share = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 0 });
  const hours = (value: number) =>
    `${new Intl.NumberFormat(locale, { maximumFractionDigits: value < 100 ? 1 : 0 }).format(value)} h`;
  return {
    hours,
    minutes: (minutes) => (minutes < 120 ? `${Math.round(minutes)} min` : hours(minutes / 60)),
    share: (value) => share.format(value),
    number: (value, digits = 2) =>
      new Intl.NumberFormat(locale, { maximumFractionDigits: digits }).format(value),
    money: ({ amount, currency }) =>
      new Intl.NumberFormat(locale, { style: 'currency', currency }).format(
        // The text is exact; a figure on the screen may be rounded to what a double holds.
        Number(amount),
      ),
    day: (instant, zone) =>
      new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: zone }).format(
        new Date(instant),
      ),
    minute: (instant, zone) =>
      new Intl.DateTimeFormat(locale, {
        year: 'numeric',
        month: 'short',
        day: 'numeric',
        hour: '2-digit',
        minute: '2-digit',
        timeZoneName: 'short',
        timeZone: zone,
      }).format(new Date(instant)),
    month: (month) =>
      new Intl.DateTimeFormat(locale, { year: 'numeric', month: 'short', timeZone: 'UTC' }).format(
        new Date(`${month}-01T00:00:00Z`),
      ),
    localDay: (day) =>
      new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' }).format(
        new Date(`${day}T00:00:00Z`),
      ),
  };
}
