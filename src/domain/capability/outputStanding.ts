import { measuredOutput, type OutputReading } from './measuredOutput.js';

/** A band and mode that a model works on, as made. */
export interface AsMade {
  readonly band: string;
  readonly mode: string;
  /** null for a receiver, or where nobody has written it down. */
  readonly watts: number | null;
}

/**
 * READING: a reading of output power on that band decides, better or worse than as made.
 * MODEL: as the model was made; nothing has been measured on this rig.
 * NOTHING: it works on that band and mode, but no power is recorded.
 */
export type OutputGround = 'READING' | 'MODEL' | 'NOTHING';

export interface OutputStanding {
  readonly watts: number | null;
  readonly restsOn: OutputGround;
  readonly readingId: string | null;
  readonly takenAtMs: number | null;
  /** A reading found no output at all. */
  readonly isDead: boolean;
}

/**
 * What a rig puts out on a band and mode as it stands; null when it does not work there. A dead
 * band is a reading of nothing, not an opinion; a rig altered to work on a band shows it by a
 * reading that names the mode.
 */
export function outputStanding(
  capabilities: readonly AsMade[],
  readings: readonly OutputReading[],
  band: string,
  mode: string,
): OutputStanding | null {
  const made = capabilities.find((one) => one.band === band && one.mode === mode);
  const reading = measuredOutput(readings, band, mode);
  if (reading !== null && (made !== undefined || reading.mode !== null)) {
    const { watts, readingId, takenAtMs } = reading;
    return { watts, restsOn: 'READING', readingId, takenAtMs, isDead: watts <= 0 };
  }
  if (made === undefined) return null;
  const restsOn = made.watts === null ? 'NOTHING' : 'MODEL';
  return { watts: made.watts, restsOn, readingId: null, takenAtMs: null, isDead: false };
}
