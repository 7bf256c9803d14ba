import { checkedInputs, inVolts } from './checkedInputs.js';
import { localCodesFirst, type Working } from './working.js';

/** RECEIVING: oxide-coated cathodes; THORIATED: thoriated-tungsten filaments of transmitting tubes. */
export type FilamentKind = 'RECEIVING' | 'THORIATED';

const tolerancePercent: Record<FilamentKind, number> = { RECEIVING: 10, THORIATED: 5 };

const toleranceSource: Record<FilamentKind, string> = {
  RECEIVING:
    '10 percent either way for receiving tubes: tube manuals as quoted in a mailing-list archive on amplifiers; the sentence of the manual itself from memory.',
  THORIATED:
    "5 percent either way for thoriated tungsten: a tube maker's booklet as quoted in a mailing-list archive.",
};

export interface HeaterVoltage {
  readonly volts: number;
  readonly deviationPercent: number;
  readonly lowestVolts: number;
  readonly highestVolts: number;
  readonly isWithinTolerance: boolean;
  /** The mains voltages between which the heater stays within its tolerance. */
  readonly lowestMainsVolts: number;
  readonly highestMainsVolts: number;
  readonly working: Working;
}

/**
 * What a heater gets on today's mains when the set was wound for another voltage.
 * @param asked.heaterVolts what the winding gives on the mains the set was made for
 * @throws BadInputs
 */
export function heaterVoltage(asked: {
  readonly heaterVolts: number;
  readonly designMainsVolts: number;
  readonly mainsVolts: number;
  readonly filament: FilamentKind;
}): HeaterVoltage {
  const { heaterVolts, designMainsVolts, mainsVolts, filament } = asked;
  const mains = { unit: 'V', from: 20, upTo: 500 };
  const inputs = checkedInputs([
    { ...inVolts('heaterVolts', heaterVolts), upTo: 150 },
    { name: 'designMainsVolts', value: designMainsVolts, ...mains },
    { name: 'mainsVolts', value: mainsVolts, ...mains },
  ]);
  const tolerance = tolerancePercent[filament] / 100;
  const volts = (heaterVolts * mainsVolts) / designMainsVolts;
  const [lowest, highest] = [1 - tolerance, 1 + tolerance];
  // A heater at the very end of its range must not be lost to the last digit of a double.
  const slack = 1e-9 * heaterVolts;
  return {
    volts,
    deviationPercent: (mainsVolts / designMainsVolts - 1) * 100,
    lowestVolts: lowest * heaterVolts,
    highestVolts: highest * heaterVolts,
    isWithinTolerance:
      volts >= lowest * heaterVolts - slack && volts <= highest * heaterVolts + slack,
    lowestMainsVolts: lowest * designMainsVolts,
    highestMainsVolts: highest * designMainsVolts,
    working: {
      formula: 'V = Vₕ·V₁/V₂',
      inputs,
      assumptions: [
        'The transformer is linear and loaded as designed.',
        'The heater has the voltage given on the mains that the set was made for.',
      ],
      sources: [toleranceSource[filament]],
      cautions: [
        'Measure at the socket with the tube in: connections and the load decide.',
        'The other windings rise and fall with the mains as well, the high voltage among them.',
        localCodesFirst,
      ],
    },
  };
}
