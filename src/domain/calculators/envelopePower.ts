import { checkedInputs, inOhms, inVolts } from './checkedInputs.js';
import type { Working } from './working.js';

export interface EnvelopePower {
  readonly watts: number;
  readonly peakVolts: number;
  readonly working: Working;
}

/**
 * Peak envelope power from the greatest peak-to-peak voltage seen on a scope: P = Vpp²/(8R).
 * @throws BadInputs
 */
export function envelopePower(asked: {
  readonly peakToPeakVolts: number;
  readonly ohms: number;
}): EnvelopePower {
  const { peakToPeakVolts, ohms } = asked;
  const inputs = checkedInputs([
    inVolts('peakToPeakVolts', peakToPeakVolts),
    { ...inOhms('ohms', ohms), upTo: 1e6 },
  ]);
  return {
    watts: (peakToPeakVolts * peakToPeakVolts) / (8 * ohms),
    peakVolts: peakToPeakVolts / 2,
    working: {
      formula: 'P = Vpp²/(8·R)',
      inputs,
      assumptions: [
        'The reading is taken at the crest of the envelope, into a load without reactance.',
        'The scope and its probe are good for the frequency.',
      ],
      sources: [
        'Definition of peak envelope power: the mean power over one cycle at the crest of the envelope.',
        'Worked in the public amateur examination, questions A-003-002-006, -007 and -009.',
      ],
      cautions: [
        'Above some tens of watts a probe needs a divider: its voltage rating falls with frequency.',
        'Radio-frequency voltage burns at the touch: measure into a dummy load.',
      ],
    },
  };
}
