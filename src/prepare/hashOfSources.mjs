import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';

/**
 * One hash of the names and the contents of all files under the places given.
 * @param {string} root
 * @param {readonly string[]} places files and folders, from the root; what does not exist counts for nothing
 * @param {readonly string[]} except folders, from the root, that are left out
 */
export function hashOfSources(root, places, except = []) {
  const hash = createHash('sha256');
  const leftOut = except.map((place) => join(root, place, '/'));
  for (const place of places) {
    for (const file of filesUnder(join(root, place))) {
      if (leftOut.some((start) => file.startsWith(start))) continue;
      hash
        .update(`${relative(root, file)}\0`)
        .update(readFileSync(file))
        .update('\0');
    }
  }
  return hash.digest('hex');
}

/**
 * @param {string} place a file or a folder; nothing when it does not exist
 * @returns {string[]} in an order that does not depend on the file system
 */
function filesUnder(place) {
  if (!existsSync(place)) return [];
  try {
    return readdirSync(place, { withFileTypes: true, recursive: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .sort();
  } catch (error) {
    if (/** @type {NodeJS.ErrnoException} */ (error).code === 'ENOTDIR') return [place];
    throw error;
  }
}
