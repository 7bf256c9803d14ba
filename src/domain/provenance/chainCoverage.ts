import { dayNumber, dateOfDay } from '../dates/dayNumber.js';
import type { LocalDate } from '../dates/localDate.js';
import type { Holding } from './chainEvent.js';

/** A time in which nobody is known to have held the thing. */
export interface ChainGap {
  readonly from: LocalDate;
  readonly to: LocalDate;
  /** Length if every date lies so as to make the gap as short as it can be. */
  readonly daysAtLeast: number;
  /** Length between the dates on which somebody surely held it. */
  readonly daysAtMost: number;
}

export interface ChainCoverage {
  readonly from: LocalDate;
  readonly to: LocalDate;
  /** Share, 0 to 1, of the days on which somebody surely held it, whatever the true dates are. */
  readonly certainShare: number;
  /** Share, 0 to 1, of the days on which somebody may have held it by what is recorded. */
  readonly possibleShare: number;
  readonly gaps: readonly ChainGap[];
}

interface Stretch {
  readonly start: number;
  /** The day after the last. */
  readonly end: number;
}

/**
 * How much of the time since the making is accounted for, and where it is not. A gap is shown when
 * no choice of the true days would close it; what is merely an uncertain date is none.
 * @param from when it was made at the latest, or the first day that anything is known of
 * @returns null when there is no time to cover
 */
export function chainCoverage(
  held: readonly Holding[],
  from: LocalDate,
  to: LocalDate,
): ChainCoverage | null {
  const span: Stretch = { start: dayNumber(from), end: dayNumber(to) + 1 };
  if (span.end <= span.start) return null;
  const known = held.filter(({ partyId }) => partyId !== null);
  const certain = merged(known.map((one) => certainStretch(one, span)));
  const possible = merged(known.map((one) => possibleStretch(one, span)));
  const gaps = complement(possible, span).map((hole): ChainGap => {
    const around = complement(certain, span).find(
      ({ start, end }) => start <= hole.start && hole.end <= end,
    );
    const widest = around ?? hole;
    return {
      from: dateOfDay(widest.start),
      to: dateOfDay(widest.end - 1),
      daysAtLeast: length(hole),
      daysAtMost: length(widest),
    };
  });
  return {
    from,
    to,
    certainShare: total(certain) / length(span),
    possibleShare: total(possible) / length(span),
    gaps,
  };
}

/** From the day on which it had surely come until the last on which it had surely not gone. */
function certainStretch({ from, until, end }: Holding, span: Stretch): Stretch {
  const start = from === null ? until?.earliest : from.latest;
  const last = end === 'STILL_HELD' ? null : until === null ? from?.latest : until.earliest;
  if (start === null || start === undefined) return nothing;
  if (end === 'STILL_HELD') return clipped(dayNumber(start), span.end, span);
  return last === null || last === undefined
    ? nothing
    : clipped(dayNumber(start), dayNumber(last) + 1, span);
}

/** From the first day on which it may have come until the last on which it may have gone. */
function possibleStretch({ from, until, end }: Holding, span: Stretch): Stretch {
  const start = from === null ? until?.earliest : from.earliest;
  const last = end === 'STILL_HELD' ? null : until === null ? from?.latest : until.latest;
  return clipped(
    start ? dayNumber(start) : span.start,
    last ? dayNumber(last) + 1 : span.end,
    span,
  );
}

const nothing: Stretch = { start: 0, end: 0 };
const length = ({ start, end }: Stretch): number => end - start;
const total = (stretches: readonly Stretch[]): number =>
  stretches.reduce((sum, stretch) => sum + length(stretch), 0);

const clipped = (start: number, end: number, span: Stretch): Stretch => ({
  start: Math.max(start, span.start),
  end: Math.min(end, span.end),
});

/** Without overlaps, in order. */
function merged(stretches: readonly Stretch[]): Stretch[] {
  const result: Stretch[] = [];
  const sorted = stretches
    .filter(({ start, end }) => start < end)
    .sort((a, b) => a.start - b.start);
  for (const stretch of sorted) {
    const last = result.at(-1);
    if (last && stretch.start <= last.end) {
      result[result.length - 1] = { start: last.start, end: Math.max(last.end, stretch.end) };
    } else result.push(stretch);
  }
  return result;
}

function complement(covered: readonly Stretch[], span: Stretch): Stretch[] {
  const edges = [span.start, ...covered.flatMap(({ start, end }) => [start, end]), span.end];
  const holes: Stretch[] = [];
  for (let place = 0; place < edges.length; place += 2) {
    const [start = 0, end = 0] = edges.slice(place, place + 2);
    if (start < end) holes.push({ start, end });
  }
  return holes;
}
