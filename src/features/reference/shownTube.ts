import { tubeFigures, type TubeFigure } from '../../domain/parts/tubeRatings.js';
import type { ReferenceTube } from './readTubes.js';
import { shownSource } from './shownSource.js';
import type { TubeReference } from './tubeReference.type.js';

/** The name and unit under which each figure is shown, and looked for among a person's ratings. */
export const figureNames: Readonly<Record<TubeFigure, { name: string; unit: string }>> = {
  heaterVolts: { name: 'heater voltage', unit: 'V' },
  heaterAmperes: { name: 'heater current', unit: 'A' },
  transconductanceMicrosiemens: { name: 'transconductance', unit: 'uS' },
  plateDissipationWatts: { name: 'plate dissipation', unit: 'W' },
  plateVolts: { name: 'plate voltage', unit: 'V' },
  inputPicofarads: { name: 'input capacitance', unit: 'pF' },
  outputPicofarads: { name: 'output capacitance', unit: 'pF' },
  gridPlatePicofarads: { name: 'grid-plate capacitance', unit: 'pF' },
};

/** A tube of the reference table as the API shows it. */
export function shownTube(tube: ReferenceTube): TubeReference {
  const { designation, aliases, base, hasTappedHeater, figures, sources, note } = tube;
  return {
    designation,
    otherNames: [...aliases],
    tubeClass: tube.class,
    isClassConfirmed: sources.class.length > 0,
    base,
    isBaseConfirmed: sources.base.length > 0,
    hasTappedHeater,
    ratings: tubeFigures.flatMap((figure) => {
      const value = figures[figure];
      if (value === undefined) return [];
      const named = sources[figure];
      const isConfirmed = named.length > 0;
      const shown = (isConfirmed ? named.map(({ key }) => key) : ['memory']).map(shownSource);
      return [{ ...figureNames[figure], value, isConfirmed, sources: shown }];
    }),
    note,
  };
}
