import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { readSeedFile } from '../reference/readSeedFile.js';
import { procedureShape, type Procedure } from './procedureShape.js';

/**
 * Reads the bring-up procedures: one YAML file each, named as its key.
 * @throws Error that names the file and what is wrong with it.
 */
export function loadProcedures(folder: string): ReadonlyMap<string, Procedure> {
  const files = readdirSync(folder).filter((file) => file.endsWith('.yaml'));
  return new Map(
    files.sort().map((file) => {
      const path = join(folder, file);
      const procedure = readSeedFile(path, procedureShape);
      if (file !== `${procedure.key}.yaml`) {
        throw new Error(`${path} holds ${procedure.key}; call the file ${procedure.key}.yaml.`);
      }
      return [procedure.key, procedure];
    }),
  );
}
