import { checkedInputs, inAmperes, inVolts } from './checkedInputs.js';
import { localCodesFirst, type Working } from './working.js';

export interface BuckingTransformer {
  readonly volts: number;
  readonly buckedVolts: number;
  /** The secondary carries the whole load. */
  readonly leastWindingAmperes: number;
  readonly leastVoltAmperes: number;
  readonly working: Working;
}

/**
 * A small transformer with its secondary in series with the load and opposing the mains.
 * @param asked.primaryVolts the mains voltage at which its secondary gives `windingVolts`
 * @throws BadInputs
 */
export function buckingTransformer(asked: {
  readonly mainsVolts: number;
  readonly windingVolts: number;
  readonly primaryVolts: number;
  readonly loadAmperes: number;
}): BuckingTransformer {
  const { mainsVolts, windingVolts, primaryVolts, loadAmperes } = asked;
  const inputs = checkedInputs(
    [
      { ...inVolts('mainsVolts', mainsVolts), upTo: 500 },
      { ...inVolts('windingVolts', windingVolts), upTo: 100 },
      { ...inVolts('primaryVolts', primaryVolts), from: 20, upTo: 500 },
      { ...inAmperes('loadAmperes', loadAmperes), upTo: 100 },
    ],
    [
      windingVolts >= primaryVolts / 2 &&
        `windingVolts is ${windingVolts}; to buck the mains take a winding of less than half of primaryVolts, ${primaryVolts}.`,
    ],
  );
  const buckedVolts = (windingVolts * mainsVolts) / primaryVolts;
  return {
    volts: mainsVolts - buckedVolts,
    buckedVolts,
    leastWindingAmperes: loadAmperes,
    leastVoltAmperes: buckedVolts * loadAmperes,
    working: {
      formula: 'V = V₁ − Vw·V₁/Vp; S = Vw·(V₁/Vp)·I',
      inputs,
      assumptions: ['The transformer is linear, and its primary lies across the mains.'],
      sources: [
        'Wiring, and a current rating of at least the load: boatanchors mailing-list archive, 22 August 1997.',
      ],
      cautions: [
        'Wired the other way round it adds: measure the output before the set is connected.',
        'Both windings are at mains potential: insulation, box, fuse and earth as for any mains part.',
        localCodesFirst,
      ],
    },
  };
}
