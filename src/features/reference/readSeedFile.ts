import { readFileSync } from 'node:fs';
import { parse as parseCsv } from 'csv-parse/sync';
import { parse as parseYaml } from 'yaml';
import { z } from 'zod';

/**
 * Reads a data file of the package, YAML or CSV with a header, and holds it to its shape.
 * @throws Error that names the file and what is wrong with it.
 */
export function readSeedFile<Shape extends z.ZodType>(path: string, shape: Shape): z.infer<Shape> {
  const checked = shape.safeParse(contentOf(path));
  if (!checked.success) throw new Error(`${path} is broken: ${z.prettifyError(checked.error)}`);
  return checked.data;
}

function contentOf(path: string): unknown {
  try {
    const text = readFileSync(path, 'utf8');
    return path.endsWith('.csv') ? parseCsv(text, { columns: true, bom: true }) : parseYaml(text);
  } catch (error) {
    throw new Error(`${path} is broken: ${String(error)}`, { cause: error });
  }
}
