import { substitutionBands } from '../../domain/parts/compareTubes.js';
import type { Basis } from '../../api/kit/basis.type.js';

const inPercent = (share: number): number => Math.round(share * 100);

/** How substitutes come about, said once for all of them. */
export function substituteBasis(nowMs: number): Basis {
  const { transconductanceDirect, transconductanceAtAll, capacitance } = substitutionBands;
  const bounds = (band: readonly [number, number]): string =>
    `${inPercent(band[0])} to ${inPercent(band[1])} %`;
  return {
    method:
      'Substitutions written down by hand come with their grade; others are computed from ratings: ' +
      'same base and class, heater within 5 % (volts in parallel, amperes in series), dissipation not less, ' +
      `transconductance ${bounds(transconductanceDirect)} as it is and ${bounds(transconductanceAtAll)} with changes, ` +
      `capacitances within ${inPercent(capacitance)} %. In stock first, then by grade, then by the price last noted.`,
    counted: [],
    assumptions: [
      'The bands are common practice without a source.',
      'Only the circuit proves a part that stands in for another.',
    ],
    asOf: new Date(nowMs).toISOString(),
  };
}
