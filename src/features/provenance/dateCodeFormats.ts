import { z } from 'zod';
import { readSeedFile } from '../reference/readSeedFile.js';
import { referenceFile } from '../reference/referenceSources.js';

/** How makers wrote dates on parts; read once when the program starts. */
export const dateCodeFormats = readSeedFile(
  referenceFile('date-codes.yaml'),
  z.array(z.looseObject({ format: z.string(), pattern: z.string() })),
);
