import { newKey } from '../../api/newKey.js';
import type { VerdictWord } from '../../gql/graphql.js';
import { ucumUnit } from '../../locale/ucumUnit.js';
import { typedUnit } from '../../locale/writtenUnit.js';
import type { KnownQuantity, MeasuredPlace } from './measuredPlaces.js';
import type { Measured } from './MeasuredFields.js';

export interface SweptRow {
  designator: string;
  value: string;
  /** Of the further columns, in their order. */
  moreValues?: readonly string[];
  /** Why the program refused it; empty until it did. */
  said: readonly string[];
}

export interface SweepDraft extends Measured {
  /** The name that the sweep is sent under: the same until something in it changes. */
  key: string;
  fitsExpected: boolean;
  /** Empty when none is used. */
  templateId: string;
  /** Columns beside the first, as a template brings them along. */
  more: readonly { quantity: string; unit: string }[];
  /** The positions of the template, in its order; empty: those of the fit-out. */
  planned: readonly string[];
  /** What is being typed. */
  designator: string;
  value: string;
  moreValues: readonly string[];
  rows: readonly SweptRow[];
  kept: readonly { designator: string; value: string; word: VerdictWord }[];
}

/** A sweep of what limits are known for most often, from the first position on. */
export function newSweep(
  places: readonly MeasuredPlace[],
  known: readonly KnownQuantity[],
): SweepDraft {
  const likely = known.find(({ tier }) => tier === 'TESTER') ?? known[0];
  const first = places.find(({ limits }) => limits.length > 0) ?? places[0];
  return {
    key: newKey(),
    quantity: likely?.quantity ?? '',
    unit: likely ? typedUnit(likely.unit) : '',
    tier: likely?.tier ?? 'TESTER',
    instrument: '',
    fitsExpected: true,
    templateId: '',
    more: [],
    planned: [],
    designator: first?.designator ?? '',
    value: '',
    moreValues: [],
    rows: [],
    kept: [],
  };
}

/** The position as the fit-out has it, however it was capitalised. */
export const placeNamed = (
  places: readonly MeasuredPlace[],
  designator: string,
): MeasuredPlace | undefined =>
  places.find((place) => place.designator.toLowerCase() === designator.trim().toLowerCase());

/** What is typed becomes a row, in the place of an earlier one of the same position; on to the next. */
export function rowTaken(draft: SweepDraft, places: readonly MeasuredPlace[]): SweepDraft {
  const typed = draft.designator.trim();
  const designator = placeNamed(places, typed)?.designator ?? typed;
  const moreValues = draft.more.map((_column, index) => (draft.moreValues[index] ?? '').trim());
  const row = { designator, value: draft.value.trim(), moreValues, said: [] };
  const isTaken = draft.rows.some((one) => one.designator === designator);
  const rows = isTaken
    ? draft.rows.map((one) => (one.designator === designator ? row : one))
    : [...draft.rows, row];
  return onToNext({ ...draft, rows, key: newKey() }, places);
}

/**
 * The next position without a row: of the template in its order, else of the fit-out, where those
 * that limits are known for go first.
 */
export function onToNext(draft: SweepDraft, places: readonly MeasuredPlace[]): SweepDraft {
  const taken = new Set([...draft.rows, ...draft.kept].map(({ designator }) => designator));
  const asked = draft.planned.flatMap((designator) => placeNamed(places, designator) ?? []);
  const order = asked.length > 0 ? asked : places;
  const from = order.findIndex((place) => place === placeNamed(order, draft.designator));
  const following = [...order.slice(from + 1), ...order.slice(0, from + 1)];
  const open = following.filter(
    ({ designator }) => !taken.has(designator) && designator !== draft.designator,
  );
  const limited = asked.length > 0 ? undefined : open.find(({ limits }) => limits.length > 0);
  return {
    ...draft,
    designator: (limited ?? open[0])?.designator ?? '',
    value: '',
    moreValues: [],
  };
}

/** Every column, the first among them. */
export const columnsOf = ({ quantity, unit, more }: SweepDraft) => [{ quantity, unit }, ...more];

/** The columns as the API takes them. */
export const sentColumns = (draft: SweepDraft) =>
  columnsOf(draft).map(({ quantity, unit }) => ({ quantity, unit: ucumUnit(unit) }));

/** What was typed for each column. */
export const valuesOf = (
  { value, moreValues = [] }: Pick<SweptRow, 'value' | 'moreValues'>,
  { more }: SweepDraft,
): string[] => [value, ...more.map((_column, index) => moreValues[index] ?? '')];
