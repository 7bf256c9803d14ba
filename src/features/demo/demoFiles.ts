import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { z } from 'zod';
import { AccessoryRole } from '../items/accessoryRole.js';
import { ItemKind } from '../items/itemKind.js';
import { Zone } from '../inspections/zone.js';
import { PartyKind } from '../parties/partyKind.js';
import { PartKind } from '../parts/partKind.js';
import { ReadingTier } from '../readings/readingTier.js';
import { ItuRegion } from '../reference/ituRegion.js';
import { DemoProblem } from './demoProblem.js';
import { text } from './storyEvent.js';

const collection = z.strictObject({
  name: text,
  owner: text,
  homeCurrency: z.string().length(3),
  zone: text,
  ituRegion: z.enum(ItuRegion).optional(),
  licenceClass: text.optional(),
  /** The day on which the files tell the story. */
  referenceDay: z.iso.date(),
  /** When the record was begun: people, places, models and part types are of that instant. */
  begunAt: text,
});

const person = z.strictObject({
  kind: z.enum(PartyKind).default('PERSON'),
  contact: text.optional(),
  note: text.optional(),
});

const place = z.strictObject({ within: text.optional(), note: text.optional() });

const limit = z.strictObject({
  quantity: text,
  tier: z.enum(ReadingTier).optional(),
  lower: z.string().optional(),
  upper: z.string().optional(),
  unit: text,
  source: text,
});

const partType = z.strictObject({
  kind: z.enum(PartKind),
  description: text,
  /** Where its ratings are published, or that they are from memory. */
  source: text.optional(),
  /** Name → `6.3 V`. */
  ratings: z.record(text, z.string().regex(/^-?\d+(\.\d+)? \S+$/)).default({}),
  limits: z.array(limit).default([]),
});

const position = z.strictObject({
  zone: z.enum(Zone),
  part: text.optional(),
  isRequired: z.boolean().default(true),
  note: text.optional(),
});

const model = z.strictObject({
  itemKind: z.enum(ItemKind),
  maker: text,
  designation: text,
  description: text,
  years: z.tuple([z.int(), z.int()]),
  note: text.optional(),
  /** Mode → bands, each with its output in watts; null for a receiver. */
  bands: z.record(text, z.record(text, z.number().nullable())).default({}),
  needs: z.array(z.enum(AccessoryRole)).default([]),
  worksWith: z.array(z.enum(AccessoryRole)).default([]),
  fitOut: z.record(text, position).default({}),
  limits: z.array(limit).default([]),
});

const item = z.strictObject({
  kind: z.enum(ItemKind),
  /** When it was written down. */
  at: text,
  model: text.optional(),
  role: z.enum(AccessoryRole).optional(),
  name: text.optional(),
  serialNumber: text.optional(),
  made: text.optional(),
  place: text,
  note: text.optional(),
});

const fileShape = z.strictObject({
  collection: collection.optional(),
  people: z.record(text, person).default({}),
  places: z.record(text, place).default({}),
  partTypes: z.record(text, partType).default({}),
  model: model.optional(),
  items: z.record(text, item).default({}),
  /** The inventory number that the story is about, where an event does not say another. */
  about: text.optional(),
  story: z.array(z.looseObject({ at: text, do: text, item: text.optional() })).default([]),
});

export type DemoFile = z.infer<typeof fileShape> & { path: string };

/**
 * Every YAML file below a folder, checked; the order is that of their paths.
 * @throws DemoProblem naming the file and the place in it.
 */
export function readDemoFiles(folder: string): DemoFile[] {
  const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  return paths
    .filter((path) => path.endsWith('.yaml'))
    .sort()
    .map((path) => readDemoFile(folder, path));
}

function readDemoFile(folder: string, path: string): DemoFile {
  const file = fileShape.safeParse(yamlIn(folder, path));
  if (!file.success) throw new DemoProblem(path, z.prettifyError(file.error));
  return { ...file.data, path };
}

function yamlIn(folder: string, path: string): unknown {
  try {
    return parse(readFileSync(join(folder, path), 'utf8'));
  } catch (error) {
    throw new DemoProblem(path, String(error), error);
  }
}
