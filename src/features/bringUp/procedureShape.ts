import { z } from 'zod';
import { HazardKind } from '../hazards/hazardKind.js';
import { Zone } from '../inspections/zone.js';
import { ReadingTier } from '../readings/readingTier.js';
import { ucumProblem } from '../readings/ucum.js';

const sentence = z.string().trim().min(1);
const key = z.string().regex(/^[a-z][a-z0-9-]{0,59}$/);
const decimal = z.string().regex(/^-?\d{1,12}(\.\d{1,12})?$/);

const readingShape = z
  .strictObject({
    quantity: sentence.max(80),
    unit: sentence.refine((unit) => ucumProblem(unit) === null, 'is no unit of UCUM'),
    tier: z.enum(ReadingTier).default('IN_CIRCUIT'),
    lower: decimal.nullable().default(null),
    upper: decimal.nullable().default(null),
    source: sentence,
  })
  .refine(
    ({ lower, upper }) => lower === null || upper === null || Number(lower) <= Number(upper),
    'has its lower end above its upper end',
  );

const stepShape = z
  .strictObject({
    key,
    title: sentence.max(120),
    /** Later steps wait for it, and the procedure stops when it fails. */
    isGate: z.boolean(),
    /** The set is connected to a supply in this step. */
    appliesPower: z.boolean(),
    instructions: z.array(sentence).min(1),
    /** Statements that hold or do not. */
    statements: z.array(sentence).default([]),
    readings: z.array(readingShape).default([]),
    cautions: z.array(sentence).min(1),
    source: sentence,
    /** Where the finding is noted when the gate fails, and what hazard comes with it. */
    zone: z.enum(Zone),
    hazardIfFailed: z.enum(HazardKind).nullable().default(null),
  })
  .refine(
    ({ statements, readings }) => statements.length + readings.length > 0,
    'asks for nothing: give it statements or readings',
  );

/** A bring-up procedure as a club writes it down. */
export const procedureShape = z
  .strictObject({
    key,
    title: sentence.max(120),
    appliesTo: sentence,
    advice: sentence,
    /** Recorded when every step is passed. */
    finalCheck: z.strictObject({
      procedure: sentence.max(120),
      validDays: z.int().min(1).max(36_500),
    }),
    steps: z.array(stepShape).min(1).max(60),
  })
  .refine(
    ({ steps }) => new Set(steps.map((step) => step.key)).size === steps.length,
    'has two steps of one key',
  )
  .refine(
    ({ steps }) => steps.findIndex((step) => step.appliesPower) !== 0,
    'applies power in its first step: put a gate before it',
  );

export type Procedure = z.infer<typeof procedureShape>;
export type ProcedureStep = Procedure['steps'][number];
