import type { CapacitorRatings } from '../../domain/parts/compareCapacitors.js';
import {
  tubeFigures,
  type Rated,
  type TubeFigure,
  type TubeRatings,
} from '../../domain/parts/tubeRatings.js';
import type { TubeClass } from '../../domain/parts/tubeClass.js';
import type { PartKind } from '../parts/partKind.js';
import { convertUnit } from '../readings/ucum.js';
import { referenceTubeNamed } from '../reference/referenceTubes.js';
import { figureNames } from '../reference/shownTube.js';

/** A part type as far as it can be compared. */
export interface PartFacts {
  id: string;
  kind: PartKind;
  designation: string;
  /** Of a tube, by the collector's own source. */
  tubeBase?: string | null;
  tubeClass?: TubeClass | null;
  tubeSource?: string | null;
  ratings: readonly { name: string; value: string; unit: string; source: string | null }[];
}

/**
 * What is known of a tube: what a person wrote down comes first, and counts as confirmed where it
 * names a source other than memory; the reference table fills the rest.
 */
export function tubeRatingsOf(part: PartFacts): TubeRatings {
  const table = referenceTubeNamed(part.designation);
  const ownIsConfirmed = isConfirmedBy(part.tubeSource ?? null);
  const figures = Object.fromEntries(
    tubeFigures.flatMap((figure): [TubeFigure, Rated<number>][] => {
      const own = ownFigure(part, figure);
      const listed = table?.figures[figure];
      if (own !== null) return [[figure, own]];
      if (listed === undefined) return [];
      const isConfirmed = (table?.sources[figure].length ?? 0) > 0;
      return [[figure, { value: Number(listed), isConfirmed }]];
    }),
  );
  return {
    designation: part.designation,
    hasTappedHeater: table?.hasTappedHeater ?? false,
    ...(table && {
      tubeClass: { value: table.class, isConfirmed: table.sources.class.length > 0 },
      base: { value: table.base, isConfirmed: table.sources.base.length > 0 },
    }),
    ...(part.tubeClass && { tubeClass: { value: part.tubeClass, isConfirmed: ownIsConfirmed } }),
    ...(part.tubeBase && { base: { value: part.tubeBase, isConfirmed: ownIsConfirmed } }),
    ...figures,
  };
}

/** A source is named, and it is not memory. */
export const isConfirmedBy = (source: string | null): boolean =>
  source !== null && !/from memory/i.test(source);

function ownFigure(part: PartFacts, figure: TubeFigure): Rated<number> | null {
  const { name, unit } = figureNames[figure];
  const rating = part.ratings.find((one) => one.name.trim().toLowerCase() === name);
  const value = rating && convertUnit(rating.value, rating.unit, unit);
  if (!rating || !value) return null;
  return { value: Number(value), isConfirmed: isConfirmedBy(rating.source) };
}

/** What a capacitor is marked with; null when its capacitance is not written down. */
export function capacitorRatingsOf(part: Pick<PartFacts, 'ratings'>): CapacitorRatings | null {
  const figure = (name: string, unit: string): number | null => {
    const rating = part.ratings.find((one) => one.name.trim().toLowerCase() === name);
    const value = rating && convertUnit(rating.value, rating.unit, unit);
    return value ? Number(value) : null;
  };
  const farads = figure('capacitance', 'F');
  if (farads === null || farads <= 0) return null;
  return { farads, workingVolts: figure('working voltage', 'V') };
}
