import { newKey } from '../../api/newKey.js';
import type { VerdictWord } from '../../gql/graphql.js';
import type { KnownQuantity, MeasuredPlace } from './measuredPlaces.js';
import type { Measured } from './MeasuredFields.js';

export interface SweptRow {
  designator: string;
  value: string;
  /** Why the program refused it; empty until it did. */
  said: readonly string[];
}

export interface SweepDraft extends Measured {
  /** The name that the sweep is sent under: the same until something in it changes. */
  key: string;
  fitsExpected: boolean;
  /** What is being typed. */
  designator: string;
  value: string;
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
    unit: likely?.unit ?? '',
    tier: likely?.tier ?? 'TESTER',
    instrument: '',
    fitsExpected: true,
    designator: first?.designator ?? '',
    value: '',
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
  const row = { designator, value: draft.value.trim(), said: [] };
  const isTaken = draft.rows.some((one) => one.designator === designator);
  const rows = isTaken
    ? draft.rows.map((one) => (one.designator === designator ? row : one))
    : [...draft.rows, row];
  return onToNext({ ...draft, rows, key: newKey() }, places);
}

/** The next position of the fit-out that limits are known for and that has no row yet. */
export function onToNext(draft: SweepDraft, places: readonly MeasuredPlace[]): SweepDraft {
  const taken = new Set([...draft.rows, ...draft.kept].map(({ designator }) => designator));
  const from = places.findIndex((place) => place === placeNamed(places, draft.designator));
  const following = [...places.slice(from + 1), ...places.slice(0, from + 1)];
  const open = following.filter(
    ({ designator }) => !taken.has(designator) && designator !== draft.designator,
  );
  const next = open.find(({ limits }) => limits.length > 0) ?? open[0];
  return { ...draft, designator: next?.designator ?? '', value: '' };
}
