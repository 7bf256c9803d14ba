import { readBands, type AmateurBand } from './readBands.js';
import { referenceFile } from './referenceSources.js';

/** Every band by region, from the longest wavelength; read once when the program starts. */
export const amateurBands: readonly AmateurBand[] = readBands(referenceFile('bands.csv'));

/** The band of a wavelength name in a region; undefined where that region has none. */
export const bandNamed = (band: string, region: AmateurBand['region']): AmateurBand | undefined =>
  amateurBands.find((one) => one.band === band && one.region === region);
