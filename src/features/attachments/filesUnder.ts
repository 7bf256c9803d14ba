import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';

/** Every file that some paths name, those in folders by name; what begins with a dot is left out. */
export async function filesUnder(paths: readonly string[]): Promise<string[]> {
  const files: string[] = [];
  for (const path of paths) {
    if (!(await stat(path)).isDirectory()) {
      files.push(path);
      continue;
    }
    const names = (await readdir(path)).filter((name) => !name.startsWith('.')).sort();
    files.push(...(await filesUnder(names.map((name) => join(path, name)))));
  }
  return files;
}
