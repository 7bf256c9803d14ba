import { checkedInputs, inWatts } from './checkedInputs.js';
import {
  exposureLimit,
  highestMegahertz,
  lowestMegahertz,
  type ExposureSituation,
} from './exposureLimit.js';
import { localCodesFirst, type Working } from './working.js';

/** How much the ground adds to the power density: nothing, the EPA's 1.6² or the full 2². */
export type GroundReflection = 'NONE' | 'EPA' | 'PERFECT';

export const groundFactor: Record<GroundReflection, number> = { NONE: 1, EPA: 2.56, PERFECT: 4 };

export interface ExposureAsked {
  readonly envelopeWatts: number;
  /** Mean over envelope power of the mode, 0 to 1. */
  readonly modeDuty: number;
  /** Share of the averaging time on the air, 0 to 1. */
  readonly onShare: number;
  readonly gainDbi: number;
  readonly megahertz: number;
  readonly ground: GroundReflection;
  /** Where the density is asked for; null for nowhere. */
  readonly metres: number | null;
}

export interface ExposureAt {
  readonly situation: ExposureSituation;
  readonly limitMilliwattsPerSquareCentimetre: number;
  /** At and beyond it the predicted density is at or below the limit. */
  readonly metres: number;
  readonly averagingMinutes: number;
}

export interface ExposureDistance {
  readonly averageWatts: number;
  readonly radiatedWatts: number;
  readonly distances: readonly ExposureAt[];
  /** mW/cm² at `metres`; null where none was given. */
  readonly density: number | null;
  /** λ/2π: nearer than that the formula says nothing. */
  readonly nearFieldMetres: number;
  readonly working: Working;
}

/**
 * From which distance on the far field of an antenna keeps the limits of exposure.
 * @throws BadInputs
 * Source: OET Bulletin 65, edition 97-01 (August 1997), section 2, equations 3 to 8, and
 * Supplement B (November 1997) for amateur stations.
 */
export function exposureDistance(asked: ExposureAsked): ExposureDistance {
  const { envelopeWatts, modeDuty, onShare, gainDbi, megahertz, ground, metres } = asked;
  const share = { unit: '1', from: 0, upTo: 1, isOpen: true };
  const inputs = checkedInputs([
    inWatts('envelopeWatts', envelopeWatts),
    { name: 'modeDuty', value: modeDuty, ...share },
    { name: 'onShare', value: onShare, ...share },
    { name: 'gainDbi', value: gainDbi, unit: 'dB', from: -60, upTo: 60 },
    {
      name: 'megahertz',
      value: megahertz,
      unit: 'MHz',
      from: lowestMegahertz,
      upTo: highestMegahertz,
    },
    ...(metres === null
      ? []
      : [{ name: 'metres', value: metres, unit: 'm', from: 0, upTo: 1e6, isOpen: true }]),
  ]);
  const averageWatts = envelopeWatts * modeDuty * onShare;
  const radiatedWatts = averageWatts * 10 ** (gainDbi / 10);
  // 10 W/m² is 1 mW/cm².
  const densityTimesSquare = (groundFactor[ground] * radiatedWatts) / (4 * Math.PI) / 10;
  const distances = (['CONTROLLED', 'UNCONTROLLED'] as const).map((situation) => {
    const limit = exposureLimit(megahertz, situation);
    return {
      situation,
      limitMilliwattsPerSquareCentimetre: limit,
      metres: Math.sqrt(densityTimesSquare / limit),
      averagingMinutes: situation === 'CONTROLLED' ? 6 : 30,
    };
  });
  const nearFieldMetres = 299.792458 / megahertz / (2 * Math.PI);
  const isNear = distances.some((one) => one.metres < nearFieldMetres);
  return {
    averageWatts,
    radiatedWatts,
    distances,
    density: metres === null ? null : densityTimesSquare / metres ** 2,
    nearFieldMetres,
    working: {
      formula: 'S = k·P·G/(4π·r²); r = √(k·P·G/(4π·S))',
      inputs,
      assumptions: [
        `Ground reflection: power density times ${groundFactor[ground]}.`,
        'The person stands in the main beam; the feed line loses nothing.',
        'The power is averaged over 6 minutes (controlled) or 30 minutes (uncontrolled): `onShare` is the share of that time.',
      ],
      sources: [
        'US Federal Communications Commission, OET Bulletin 65, edition 97-01 (August 1997), section 2, with Supplement B (November 1997).',
        'Limits: 47 CFR 1.1310, table 1.',
      ],
      cautions: [
        ...(isNear
          ? [
              `A distance below ${nearFieldMetres.toFixed(2)} m (λ/2π) lies in the near field, where this formula does not hold: keep at least that far off, or have it measured.`,
            ]
          : []),
        'Other countries have limits of their own; the licence held and national rules decide.',
        'Touching an antenna or feed line burns, whatever the distance that comes out here.',
        localCodesFirst,
      ],
    },
  };
}
