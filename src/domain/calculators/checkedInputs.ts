import type { Quantity } from './working.js';

/** An input with the range in which the rule means something. */
export interface GivenInput extends Quantity {
  /** The least that is accepted; the figure itself is refused where `isOpen`. */
  readonly from: number;
  readonly upTo: number;
  /** The lower end itself is refused: nothing can be divided by a resistance of 0. */
  readonly isOpen?: boolean;
}

/** What is wrong with the inputs of a calculation, all of it, in sentences. */
export class BadInputs extends RangeError {
  constructor(readonly problems: readonly string[]) {
    super(problems.join(' '));
    this.name = 'BadInputs';
  }
}

/**
 * Holds inputs to their ranges.
 * @param others further problems that the caller found
 * @returns the inputs as they are shown
 * @throws BadInputs with every problem
 */
export function checkedInputs(
  given: readonly GivenInput[],
  others: readonly (string | false)[] = [],
): Quantity[] {
  const problems = [
    ...given.filter((input) => !isInRange(input)).map(outOfRange),
    ...others.filter((problem) => problem !== false),
  ];
  if (problems.length > 0) throw new BadInputs(problems);
  return given.map(({ name, value, unit }) => ({ name, value, unit }));
}

const isInRange = ({ value, from, upTo, isOpen = false }: GivenInput): boolean =>
  Number.isFinite(value) && (isOpen ? value > from : value >= from) && value <= upTo;

const outOfRange = ({ name, value, unit, from, upTo, isOpen = false }: GivenInput): string => {
  const inUnit = unit === '1' ? '' : ` ${unit}`;
  return `${name} is ${value}; give ${isOpen ? 'more than' : 'at least'} ${from} and at most ${upTo}${inUnit}.`;
};

/** Ranges that several rules share: what a vacuum-tube set may hold, with room to spare. */
export const inVolts = (name: string, value: number): GivenInput => ({
  name,
  value,
  unit: 'V',
  from: 0,
  upTo: 100_000,
  isOpen: true,
});
export const inMicrofarads = (name: string, value: number): GivenInput => ({
  name,
  value,
  unit: 'uF',
  from: 0,
  upTo: 1_000_000,
  isOpen: true,
});
export const inOhms = (name: string, value: number): GivenInput => ({
  name,
  value,
  unit: 'Ohm',
  from: 0,
  upTo: 1e12,
  isOpen: true,
});
export const inAmperes = (name: string, value: number): GivenInput => ({
  name,
  value,
  unit: 'A',
  from: 0,
  upTo: 1000,
  isOpen: true,
});
export const inWatts = (name: string, value: number): GivenInput => ({
  name,
  value,
  unit: 'W',
  from: 0,
  upTo: 1_000_000,
  isOpen: true,
});
