import { z } from 'zod';
import { readSeedFile } from './readSeedFile.js';
import { referenceFile } from './referenceSources.js';

const decimal = z.string().regex(/^\d+(\.\d+)?$/);

/** Preferred number series by name, E3 to E192. */
export const preferredSeries = new Map(
  readSeedFile(
    referenceFile('preferred-values.yaml'),
    z.array(
      z.strictObject({
        series: z.enum(['E3', 'E6', 'E12', 'E24', 'E48', 'E96', 'E192']),
        tolerancePercent: decimal,
        source: z.string(),
        values: z.array(decimal).min(3),
      }),
    ),
  ).map((one) => [one.series, one]),
);

export const colourCode = readSeedFile(
  referenceFile('colour-code.yaml'),
  z.strictObject({
    source: z.string(),
    colours: z.array(
      z.strictObject({
        colour: z.string(),
        digit: z.number().int().min(0).max(9).nullable(),
        exponent: z.number().int().nullable(),
        tolerancePercent: decimal.nullable(),
        isToleranceConfirmed: z.boolean(),
        ppmPerKelvin: z.number().nullable(),
      }),
    ),
  }),
);

export const letterCode = readSeedFile(
  referenceFile('letter-code.yaml'),
  z.strictObject({
    source: z.string(),
    multipliers: z.array(
      z.strictObject({
        letter: z.string(),
        exponent: z.number().int(),
        unit: z.enum(['Ohm', 'F']),
      }),
    ),
    tolerances: z.array(
      z.strictObject({ letter: z.string(), percent: decimal, isConfirmed: z.boolean() }),
    ),
  }),
);

export const dateCodeFormats = readSeedFile(
  referenceFile('date-codes.yaml'),
  z.array(
    z.strictObject({
      format: z.string(),
      pattern: z.string(),
      example: z.string(),
      meaning: z.string(),
      source: z.string(),
    }),
  ),
);
