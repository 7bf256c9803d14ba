import { join } from 'node:path';
import { packageFolder } from '../packageFolder.js';

/** A folder under `seed/`. */
export const seedFolder = (name: string, from: string = import.meta.dirname): string =>
  packageFolder(join('seed', name), from);
