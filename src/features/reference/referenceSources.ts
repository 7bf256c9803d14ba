import { join } from 'node:path';
import { z } from 'zod';
import { seedFolder } from '../hazards/seedFolder.js';
import { readSeedFile } from './readSeedFile.js';

const sourceShape = z.strictObject({
  key: z.string().regex(/^[a-z0-9-]+$/),
  title: z.string().trim().min(10),
  address: z.url().optional(),
  /** False for what nobody has compared with a published page yet. */
  isPublished: z.boolean(),
});

/** Where figures of the reference tables come from. */
export type ReferenceSource = z.infer<typeof sourceShape>;

/** A file of `seed/reference`. */
export const referenceFile = (name: string): string => join(seedFolder('reference'), name);

/** By key; read once when the program starts. */
export const referenceSources: ReadonlyMap<string, ReferenceSource> = new Map(
  readSeedFile(referenceFile('sources.yaml'), z.array(sourceShape)).map((source) => [
    source.key,
    source,
  ]),
);

/** @throws Error for a key that `sources.yaml` does not have, which ends the start. */
export function sourceNamed(key: string): ReferenceSource {
  const source = referenceSources.get(key);
  if (!source) throw new Error(`seed/reference/sources.yaml has no source called ${key}.`);
  return source;
}
