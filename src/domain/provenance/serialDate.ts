import { dayNumber, dateOfDay } from '../dates/dayNumber.js';
import type { LocalDate } from '../dates/localDate.js';

/** A set of the same model whose serial number and date of making are both known. */
export interface DatedSerial {
  readonly serialNumber: string;
  readonly earliest: LocalDate;
  readonly latest: LocalDate;
}

export type SerialDate =
  /** Too little is known; `why` says what is missing. */
  | { readonly kind: 'NONE'; readonly why: string }
  /** Two dated serials contradict the order of numbers: nothing follows from either. */
  | { readonly kind: 'OUT_OF_ORDER'; readonly serialNumbers: readonly [string, string] }
  | {
      readonly kind: 'DATED';
      /** What the neighbours allow, if numbers were given in order; null: no neighbour on that side. */
      readonly earliest: LocalDate | null;
      readonly latest: LocalDate | null;
      /** Interpolated between the neighbours, widened by the spread; null without two neighbours. */
      readonly estimate: { readonly earliest: LocalDate; readonly latest: LocalDate } | null;
      /**
       * How far, at most, a known serial lay from what its own neighbours say of it, in days; null
       * when fewer than three are known, so that none lies between two others.
       */
      readonly spreadDays: number | null;
      readonly neighbours: readonly string[];
    };

interface Point {
  readonly serialNumber: string;
  readonly number: number;
  first: number;
  last: number;
}

/**
 * When a set was made, from its serial number among dated ones of the same model: if numbers were
 * given in order, a set lies between its neighbours; how far between them is interpolated in
 * proportion to the numbers, which keeps the order. Letters before and after the number must agree.
 */
export function serialDate(serialNumber: string, dated: readonly DatedSerial[]): SerialDate {
  const own = serialParts(serialNumber);
  if (own === null) return { kind: 'NONE', why: `“${serialNumber}” has no number in it.` };
  const points = pointsLike(own.letters, dated);
  if (points.length === 0) {
    return { kind: 'NONE', why: 'No dated serial number of this model is written alike.' };
  }
  const clash = clashAmong(points);
  if (clash) return { kind: 'OUT_OF_ORDER', serialNumbers: clash };
  tighten(points);
  const below = points.findLast(({ number }) => number <= own.number);
  const above = points.find(({ number }) => number >= own.number);
  const spreadDays = spreadOf(points);
  const neighbours = [...new Set([below, above])].flatMap((one) => one?.serialNumber ?? []);
  const bracket = {
    earliest: below ? dateOfDay(below.first) : null,
    latest: above ? dateOfDay(above.last) : null,
  };
  if (!below || !above) {
    return { kind: 'DATED', ...bracket, estimate: null, spreadDays, neighbours };
  }
  const [first, last] = between(below, above, own.number);
  const estimate = {
    earliest: dateOfDay(Math.max(below.first, Math.floor(first - (spreadDays ?? 0)))),
    latest: dateOfDay(Math.min(above.last, Math.ceil(last + (spreadDays ?? 0)))),
  };
  return { kind: 'DATED', ...bracket, estimate, spreadDays, neighbours };
}

function serialParts(text: string): { letters: string; number: number } | null {
  const [, before = '', digits, after = ''] = /^(.*?)(\d{1,15})(\D*)$/u.exec(text.trim()) ?? [];
  if (digits === undefined) return null;
  return { letters: `${before}#${after}`.toUpperCase(), number: Number(digits) };
}

function pointsLike(letters: string, dated: readonly DatedSerial[]): Point[] {
  return dated
    .flatMap(({ serialNumber, earliest, latest }): Point[] => {
      const parts = serialParts(serialNumber);
      if (parts?.letters !== letters) return [];
      const { number } = parts;
      return [{ serialNumber, number, first: dayNumber(earliest), last: dayNumber(latest) }];
    })
    .sort((one, other) => one.number - other.number);
}

function clashAmong(points: readonly Point[]): [string, string] | null {
  for (const [place, lower] of points.entries()) {
    const higher = points.slice(place + 1).find(({ last }) => last < lower.first);
    if (higher) return [lower.serialNumber, higher.serialNumber];
  }
  return null;
}

/** A set is no earlier than any with a lower number and no later than any with a higher one. */
function tighten(points: Point[]): void {
  let first = Number.NEGATIVE_INFINITY;
  for (const point of points) first = point.first = Math.max(first, point.first);
  let last = Number.POSITIVE_INFINITY;
  for (const point of points.toReversed()) last = point.last = Math.min(last, point.last);
}

function between(below: Point, above: Point, number: number): [number, number] {
  const width = above.number - below.number;
  const share = width === 0 ? 0 : (number - below.number) / width;
  const at = (from: number, to: number): number => from + share * (to - from);
  return [at(below.first, above.first), at(below.last, above.last)];
}

/** Each known serial left out in turn: how far its middle lies from what its neighbours say. */
function spreadOf(points: readonly Point[]): number | null {
  const inner = points.flatMap((point, place) => {
    const [below, above] = [points[place - 1], points[place + 1]];
    if (!below || !above) return [];
    const [first, last] = between(below, above, point.number);
    return Math.abs((first + last) / 2 - (point.first + point.last) / 2);
  });
  return inner.length === 0 ? null : Math.ceil(Math.max(...inner));
}
