import { DateTime, IANAZone } from 'luxon';

/** A month or week as one zone's calendar has it; its end is not included. */
export interface LocalPeriod {
  /** 'YYYY-MM' for a month, 'YYYY-Www' (ISO 8601 week) for a week. */
  readonly label: string;
  readonly startsAtMs: number;
  readonly endsAtMs: number;
}

const WEEK_MS = 7 * 24 * 60 * 60 * 1000;
const FIRST_MONDAY_OF_EPOCH_MS = Date.UTC(1970, 0, 5);

/** Finds the local month or week that an instant falls in, remembering those already found. */
export class LocalPeriods {
  readonly #kind: 'MONTH' | 'WEEK';
  readonly #byZone = new Map<string, Map<number, LocalPeriod>>();

  constructor(kind: 'MONTH' | 'WEEK') {
    this.#kind = kind;
  }

  /** @throws RangeError when the zone is not an IANA zone known here. */
  at(instantMs: number, zone: string): LocalPeriod {
    const known = this.#zone(zone);
    // Zones lie less than a day from UTC, so the local period is UTC's own or a neighbour of it.
    let index = this.#kind === 'MONTH' ? utcMonthIndex(instantMs) : utcWeekIndex(instantMs);
    let period = this.#period(known, index, zone);
    while (instantMs < period.startsAtMs) period = this.#period(known, (index -= 1), zone);
    while (instantMs >= period.endsAtMs) period = this.#period(known, (index += 1), zone);
    return period;
  }

  #zone(zone: string): Map<number, LocalPeriod> {
    let known = this.#byZone.get(zone);
    if (known === undefined) {
      if (!IANAZone.isValidZone(zone)) throw new RangeError(`"${zone}" is not a known time zone.`);
      known = new Map();
      this.#byZone.set(zone, known);
    }
    return known;
  }

  #period(known: Map<number, LocalPeriod>, index: number, zone: string): LocalPeriod {
    let period = known.get(index);
    if (period === undefined) {
      const first = this.#firstDay(index);
      period = {
        label: first.toFormat(this.#kind === 'MONTH' ? 'yyyy-MM' : "kkkk-'W'WW"),
        startsAtMs: firstInstantOf(first, zone),
        endsAtMs: firstInstantOf(this.#firstDay(index + 1), zone),
      };
      known.set(index, period);
    }
    return period;
  }

  #firstDay(index: number): DateTime {
    return this.#kind === 'MONTH'
      ? DateTime.utc(Math.floor(index / 12), (((index % 12) + 12) % 12) + 1, 1)
      : DateTime.fromMillis(FIRST_MONDAY_OF_EPOCH_MS + index * WEEK_MS, { zone: 'utc' });
  }
}

function utcMonthIndex(instantMs: number): number {
  const date = new Date(instantMs);
  return date.getUTCFullYear() * 12 + date.getUTCMonth();
}

function utcWeekIndex(instantMs: number): number {
  return Math.floor((instantMs - FIRST_MONDAY_OF_EPOCH_MS) / WEEK_MS);
}

/**
 * The first instant that bears a local date. Where clocks skip midnight this is the moment after
 * the skip; where midnight comes twice, the first of the two (in Havana, 1 November 2020).
 */
function firstInstantOf(day: DateTime, zone: string): number {
  const midnight = day.setZone(zone, { keepLocalTime: true });
  return Math.min(...midnight.getPossibleOffsets().map((candidate) => candidate.toMillis()));
}
