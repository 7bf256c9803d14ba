import { voltsOfEnergy } from './storedEnergy.js';

/** From `fromVolts` and below `belowVolts`, so much energy counts as dangerous. */
interface EnergyBand {
  readonly fromVolts: number;
  readonly belowVolts: number;
  readonly joules: number;
}

/** A published line between a bank of capacitors that counts as dangerous and one that does not. */
export interface CapacitorThreshold {
  readonly rule: string;
  /** The line in words. */
  readonly limit: string;
  readonly source: string;
  /** False: from memory, compared with no published page. */
  readonly isConfirmed: boolean;
  /** The voltage at and above which a bank of this capacitance is over the line. */
  readonly volts: number;
  /** For rules on time: seconds in which the bank must come under it; null for all others. */
  readonly allowedSeconds: number | null;
}

/**
 * Every published threshold for a bank of capacitors. They differ by a factor of forty in energy:
 * name the one that was applied, and prefer the stricter.
 * @param startVolts decides which time the installation code allows
 */
export function capacitorThresholds(
  microfarads: number,
  startVolts: number,
): readonly CapacitorThreshold[] {
  const byEnergy = (bands: readonly EnergyBand[]) => lineOf(microfarads, bands);
  const allowedSeconds = startVolts <= 600 ? 60 : 300;
  return [
    {
      rule: 'US national laboratory, shock and heat',
      limit: '100 V or more with 10 J or more; below 100 V, 100 J or more.',
      source:
        'Electrical safety manual of a US national laboratory, tables 2.2.13 and 2.3.5 (electricalsafety.lbl.gov)',
      isConfirmed: true,
      volts: byEnergy([band(0, 100, 100), band(100, Infinity, 10)]),
      allowedSeconds: null,
    },
    {
      rule: 'NFPA 70E (2021), article 360 and annex R',
      limit: '100 J below 100 V, 1 J from 100 to 400 V, 0.25 J above 400 V.',
      source:
        'NFPA 70E (2021), from memory; the step at 0.25 J above 400 V is repeated in a published work instruction',
      isConfirmed: false,
      volts: byEnergy([band(0, 100, 100), band(100, 400, 1), band(400, Infinity, 0.25)]),
      allowedSeconds: null,
    },
    {
      rule: 'US National Electrical Code, 460.6',
      limit: `Under 50 V within ${allowedSeconds === 60 ? 'a minute (up to 600 V)' : '5 minutes (above 600 V)'} of switching off.`,
      source:
        'National Electrical Code, section 460.6: up to 600 V as quoted by a trade journal (ecmweb.com, code quiz); above 600 V from memory',
      isConfirmed: allowedSeconds === 60,
      volts: 50,
      allowedSeconds,
    },
    {
      rule: 'IEC 62368-1 (2018), class 1 source',
      limit: `${classOneVolts(microfarads)} V for this capacitance.`,
      source:
        'IEC 62368-1 (2018), table of capacitor voltages, from memory; the row of 41 nF at 150 V is confirmed by a published thread',
      isConfirmed: false,
      volts: classOneVolts(microfarads),
      allowedSeconds: null,
    },
    {
      rule: 'IEC 60950 and 60335-1, limited current',
      limit: '0.1 uF from 42.4 to 450 V; 45 uC up to 15 kV; 0.35 J above.',
      source: 'IEC 60950 and IEC 60335-1, as quoted on two published pages on capacitor discharge',
      isConfirmed: true,
      volts: limitedCurrentVolts(microfarads),
      allowedSeconds: null,
    },
  ];
}

const band = (fromVolts: number, belowVolts: number, joules: number): EnergyBand => ({
  fromVolts,
  belowVolts,
  joules,
});

/** The lowest voltage that falls into one of the bands. */
function lineOf(microfarads: number, bands: readonly EnergyBand[]): number {
  const lines = bands.map(({ fromVolts, belowVolts, joules }) => {
    const volts = Math.max(fromVolts, voltsOfEnergy(microfarads, joules));
    return volts < belowVolts ? volts : Infinity;
  });
  return Math.min(...lines);
}

/** The row of the next larger capacitance counts: the stricter of two neighbours. */
function classOneVolts(microfarads: number): number {
  const rows: readonly [nanofarads: number, volts: number][] = [
    [4, 1000],
    [8, 500],
    [12, 350],
    [18, 250],
    [28, 200],
    [41, 150],
    [61, 125],
    [91, 100],
    [170, 75],
  ];
  return rows.find(([nanofarads]) => microfarads * 1000 <= nanofarads)?.[1] ?? 60;
}

function limitedCurrentVolts(microfarads: number): number {
  if (microfarads > 0.1) return 42.4;
  const byCharge = 45 / microfarads;
  if (byCharge <= 15_000) return Math.max(450, byCharge);
  return Math.max(15_000, voltsOfEnergy(microfarads, 0.35));
}

/** Whether a bank at some voltage is over a line that `capacitorThresholds` drew for it. */
export const isOver = ({ volts }: CapacitorThreshold, bankVolts: number): boolean =>
  bankVolts >= volts;
