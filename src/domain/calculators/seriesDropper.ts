import { checkedInputs, inAmperes, inVolts } from './checkedInputs.js';
import { localCodesFirst, type Working } from './working.js';

export interface SeriesDropper {
  readonly ohms: number;
  readonly watts: number;
  /** The rating to buy, in watts: at least twice the heat. */
  readonly ratedWatts: number;
  readonly working: Working;
}

/**
 * The resistor in series with a load that brings the mains down to what the set was made for.
 * @throws BadInputs
 */
export function seriesDropper(asked: {
  readonly mainsVolts: number;
  readonly wantedVolts: number;
  readonly loadAmperes: number;
}): SeriesDropper {
  const { mainsVolts, wantedVolts, loadAmperes } = asked;
  const inputs = checkedInputs(
    [
      { ...inVolts('mainsVolts', mainsVolts), upTo: 500 },
      { ...inVolts('wantedVolts', wantedVolts), upTo: 500 },
      { ...inAmperes('loadAmperes', loadAmperes), upTo: 100 },
    ],
    [
      wantedVolts >= mainsVolts &&
        `wantedVolts is ${wantedVolts}; a resistor only lowers: give less than mainsVolts, ${mainsVolts}.`,
    ],
  );
  const dropped = mainsVolts - wantedVolts;
  const watts = dropped * loadAmperes;
  return {
    ohms: dropped / loadAmperes,
    watts,
    ratedWatts: 2 * watts,
    working: {
      formula: 'R = (V₁ − V)/I; P = (V₁ − V)·I',
      inputs,
      assumptions: ['The load draws the current given all the time, and in phase.'],
      sources: ["Ohm's law.", 'Twice the wattage: common practice, no source.'],
      cautions: [
        'The drop follows the current: at switching on and on transmit it is another one.',
        'The resistor gets hot and sits at mains potential: in the open air, behind a guard.',
        'A transformer wired to oppose loses less and holds the voltage better.',
        localCodesFirst,
      ],
    },
  };
}
