import { DateTime } from 'luxon';

const written =
  /^(?:(\d{4}-\d{2}-\d{2})|(spring|autumn) clock change|month end, (\d+) back) (\d{2}:\d{2})$/;

/**
 * Moves the story to the day of loading: every local day by the same number of whole days, every
 * local time read anew in the zone. Two sorts of night cannot be moved by days and stay what they
 * are: the latest clock change before today, and the last night of a month.
 */
export class DemoClock {
  private readonly shiftDays: number;

  /** @param referenceDay the day on which the files tell the story. @param today the local day. */
  constructor(
    private readonly zone: string,
    referenceDay: string,
    private readonly today: string,
  ) {
    this.shiftDays = noon(today).diff(noon(referenceDay), 'days').days;
  }

  /** A local day of the files, as it is told today. */
  day(day: string): string {
    if (!noon(day).isValid) throw new Error(`“${day}” is not a day: write 2025-03-14.`);
    return noon(day).plus({ days: this.shiftDays }).toFormat('yyyy-MM-dd');
  }

  /** @throws Error with a sentence when the text is no time of a story. */
  instant(text: string): Date {
    const [, day, season, monthsBack, time] = written.exec(text) ?? [];
    if (time === undefined) {
      throw new Error(
        `“${text}” is no time: write 2025-03-14 19:30, “autumn clock change 00:30” or “month end, 2 back 22:40”.`,
      );
    }
    if (day !== undefined) return this.at(this.day(day), time);
    if (season !== undefined) return this.at(this.clockChange(season), time);
    const monthEnd = noon(this.today)
      .minus({ months: Number(monthsBack) })
      .endOf('month');
    return this.at(monthEnd.toFormat('yyyy-MM-dd'), time);
  }

  /** The first time that the clock shows `HH:mm` after an instant. */
  nextTime(time: string, after: Date): Date {
    const start = DateTime.fromJSDate(after, { zone: this.zone });
    const sameDay = this.at(start.toFormat('yyyy-MM-dd'), time);
    return sameDay > after
      ? sameDay
      : this.at(start.plus({ days: 1 }).toFormat('yyyy-MM-dd'), time);
  }

  private at(day: string, time: string): Date {
    const local = DateTime.fromISO(`${day}T${time}`, { zone: this.zone });
    if (!local.isValid) throw new Error(`“${day} ${time}” is not in the calendar.`);
    return local.toJSDate();
  }

  /** The latest day before today on which the zone's clock is put forward or back. */
  private clockChange(season: string): string {
    let day = noon(this.today).setZone(this.zone, { keepLocalTime: true }).startOf('day');
    for (let back = 0; back < 400; back++) {
      const before = day.minus({ days: 1 });
      const change = day.offset - before.offset;
      if (season === 'spring' ? change > 0 : change < 0) return before.toFormat('yyyy-MM-dd');
      day = before;
    }
    throw new Error(`The clocks of ${this.zone} are not changed in ${season}.`);
  }
}

const noon = (day: string): DateTime => DateTime.fromISO(`${day}T12:00`, { zone: 'utc' });
