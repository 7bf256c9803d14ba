import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';

/**
 * A folder under `seed/` at the package's root, from the sources and from `dist/` alike.
 * @throws Error when no package.json lies above the module.
 */
export function seedFolder(name: string, from: string = import.meta.dirname): string {
  if (existsSync(join(from, 'package.json'))) return join(from, 'seed', name);
  const above = dirname(from);
  if (above === from)
    throw new Error('No package.json above the program: its seed files are lost.');
  return seedFolder(name, above);
}
