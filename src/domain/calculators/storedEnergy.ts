/** Energy in a charged capacitor, in joules: E = C·V²/2. */
export const storedEnergy = (microfarads: number, volts: number): number =>
  (microfarads * 1e-6 * volts * volts) / 2;

/** The voltage at which a capacitor holds so much energy: V = √(2E/C). */
export const voltsOfEnergy = (microfarads: number, joules: number): number =>
  Math.sqrt((2 * joules) / (microfarads * 1e-6));
