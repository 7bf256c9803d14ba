import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { readSeedFile } from '../reference/readSeedFile.js';
import { HazardKind } from './hazardKind.js';

const sentence = z.string().trim().min(1);

const guideShape = z.strictObject({
  kind: z.enum(HazardKind),
  recognisedBy: sentence,
  cautions: z.array(sentence).min(1),
  protection: z.array(sentence).min(1),
  clearedBy: sentence,
  /** Belongs to the design and stays: a caution for ever, and no reason to leave the set off. */
  belongsToDesign: z.boolean(),
  advice: sentence,
  source: sentence,
});

/** What the collector is told of one kind of hazard. */
export type HazardGuide = z.infer<typeof guideShape>;

export type HazardCatalogue = ReadonlyMap<HazardKind, HazardGuide>;

/**
 * Reads the catalogue: one YAML file a kind, named as the kind.
 * @throws Error that names the file and what is wrong with it, or the kinds without a file.
 */
export function loadHazardCatalogue(folder: string): HazardCatalogue {
  const files = readdirSync(folder).filter((file) => file.endsWith('.yaml'));
  const catalogue = new Map(files.sort().map((file) => guideIn(folder, file)));
  const missing = Object.values(HazardKind).filter((kind) => !catalogue.has(kind));
  if (missing.length > 0) {
    throw new Error(`${folder} has no file for ${missing.map(fileNameOf).join(', ')}.`);
  }
  return catalogue;
}

function guideIn(folder: string, file: string): [HazardKind, HazardGuide] {
  const path = join(folder, file);
  const guide = readSeedFile(path, guideShape);
  if (file !== fileNameOf(guide.kind)) {
    throw new Error(`${path} holds ${guide.kind}; call the file ${fileNameOf(guide.kind)}.`);
  }
  return [guide.kind, guide];
}

const fileNameOf = (kind: HazardKind): string => `${kind.toLowerCase().replaceAll('_', '-')}.yaml`;
