import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';

/**
 * A folder beside package.json, found from the sources and from `dist/` alike.
 * @throws Error when no package.json lies above the module.
 */
export function packageFolder(place: string, from: string = import.meta.dirname): string {
  if (existsSync(join(from, 'package.json'))) return join(from, place);
  const above = dirname(from);
  if (above === from) {
    throw new Error('No package.json above the program: what came with it is lost.');
  }
  return packageFolder(place, above);
}
