import { nearestPreferred, type PreferredValue } from '../values/nearestPreferred.js';

/** A capacitor in its place, as the set was made. */
export interface CapacitorPlace {
  readonly designator: string;
  /** In microfarads, more than 0. */
  readonly microfarads: number;
  /** Working voltage in volts; null where it is not written down. */
  readonly workingVolts: number | null;
}

/** One line of an order. */
export interface OrderLine {
  /** A value that is made, in microfarads, an exact decimal. */
  readonly microfarads: string;
  /** At least so many volts: the highest of the originals. null: read it on the parts first. */
  readonly workingVoltsAtLeast: number | null;
  readonly designators: readonly string[];
  /** What is replaced, and how far the ordered value lies off, in percent. */
  readonly originals: readonly { microfarads: number; differencePercent: number }[];
  /** Other values of the series that would serve, the nearest first. */
  readonly alternatives: readonly string[];
  readonly quantity: number;
  readonly spares: number;
}

/**
 * Groups the capacitors of a set into an order: the preferred value nearest to each, a working voltage
 * not less than the original's, so many of each, and spares for each line. Originals of unlike voltage
 * are ordered apart, so that nobody pays for 630 V where 100 V will do; the quantities add up to the
 * places.
 * @param withinPercent how far an alternative may lie off and still be named
 */
export function replacementOrder(
  places: readonly CapacitorPlace[],
  oneDecade: readonly string[],
  sparesPerLine: number,
  withinPercent: number,
): OrderLine[] {
  const lines = new Map<string, CapacitorPlace[]>();
  const found = new Map<number, readonly [PreferredValue, ...PreferredValue[]]>();
  for (const place of places) {
    const serving =
      found.get(place.microfarads) ?? nearestPreferred(place.microfarads, oneDecade, withinPercent);
    found.set(place.microfarads, serving);
    const key = `${serving[0].value} ${place.workingVolts ?? '?'}`;
    lines.set(key, [...(lines.get(key) ?? []), place]);
  }
  const order = [...lines.values()].map((own): OrderLine => {
    const values = [...new Set(own.map(({ microfarads }) => microfarads))];
    const serving = values.map((value) => found.get(value) ?? nearestPreferred(value, oneDecade));
    return {
      microfarads: serving[0]?.[0].value ?? '',
      workingVoltsAtLeast: own[0]?.workingVolts ?? null,
      designators: own.map(({ designator }) => designator),
      originals: values.map((microfarads, index) => ({
        microfarads,
        differencePercent: serving[index]?.[0].differencePercent ?? 0,
      })),
      alternatives: [
        ...new Set(serving.flatMap(([, ...others]) => others.map(({ value }) => value))),
      ],
      quantity: own.length,
      spares: sparesPerLine,
    };
  });
  return order.sort(
    (one, other) =>
      Number(one.microfarads) - Number(other.microfarads) ||
      (one.workingVoltsAtLeast ?? 0) - (other.workingVoltsAtLeast ?? 0),
  );
}
