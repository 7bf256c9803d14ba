/** A reading of output power on a band, taken on a rig. */
export interface OutputReading {
  readonly readingId: string;
  readonly band: string;
  /** null: the reading names the band alone and speaks for every mode on it. */
  readonly mode: string | null;
  readonly watts: number;
  readonly takenAtMs: number;
}

/** `output power 40m CW`, `output power 40m`: however it was capitalised or spaced. */
const OUTPUT_ON_A_BAND =
  /^output power (?:on )?(\d{1,4}(?:\.\d{1,2})?) ?(m|cm|mm)(?: ([a-z0-9]+))?$/;

/** The band and mode that a quantity of output power names; null for any other quantity. */
export function outputQuantity(quantity: string): { band: string; mode: string | null } | null {
  const plain = quantity.trim().replace(/\s+/g, ' ').toLowerCase();
  const [, length, unit, mode] = OUTPUT_ON_A_BAND.exec(plain) ?? [];
  if (length === undefined || unit === undefined) return null;
  return { band: `${length}${unit}`, mode: mode?.toUpperCase() ?? null };
}

/**
 * The reading that decides what a rig puts out on a band and mode: the latest that names both, or
 * the band alone. Of two at one instant the lower counts.
 */
export function measuredOutput(
  readings: readonly OutputReading[],
  band: string,
  mode: string,
): OutputReading | null {
  return readings.reduce<OutputReading | null>((latest, reading) => {
    if (reading.band !== band || (reading.mode !== null && reading.mode !== mode)) return latest;
    if (latest === null || reading.takenAtMs > latest.takenAtMs) return reading;
    const isTie = reading.takenAtMs === latest.takenAtMs;
    return isTie && reading.watts < latest.watts ? reading : latest;
  }, null);
}
