import { readTubes, type ReferenceTube } from './readTubes.js';
import { referenceFile } from './referenceSources.js';

/** Every tube of the table; read once when the program starts. */
export const referenceTubes: readonly ReferenceTube[] = readTubes(referenceFile('tubes.csv'));

const byName = new Map(
  referenceTubes.flatMap((tube) =>
    [tube.designation, ...tube.aliases].map((name): [string, ReferenceTube] => [name, tube]),
  ),
);

/** The tube of a designation or of another name of it, however it is spaced and cased. */
export const referenceTubeNamed = (designation: string): ReferenceTube | undefined =>
  byName.get(designation.replaceAll(/[\s/]+/g, '').toUpperCase());
