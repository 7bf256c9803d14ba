import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { Command } from 'commander';
import { lexicographicSortSchema, printSchema } from 'graphql';
import { buildApiSchema } from '../api/buildApiSchema.js';
import { CommandFailure } from './commandFailure.js';
import type { Surroundings } from './surroundings.js';

interface SchemaOptions {
  write?: boolean;
  check?: boolean;
  file: string;
}

export const addSchema = (program: Command, around: Surroundings): Command =>
  program
    .command('schema')
    .description('Print the GraphQL schema, write it down, or compare it with what is written.')
    .option('--write', 'write it into the file')
    .option('--check', 'fail when the file says something else')
    .option('--file <path>', 'the file', 'schema/schema.graphql')
    .action((options: SchemaOptions) => schema(around, options));

/** Prints, writes or compares the schema. @throws CommandFailure when the file differs. */
export async function schema(around: Surroundings, options: SchemaOptions): Promise<void> {
  const text = `${printSchema(lexicographicSortSchema(await buildApiSchema()))}\n`;
  if (options.write) {
    await mkdir(dirname(options.file), { recursive: true });
    await writeFile(options.file, text);
    around.say(`Wrote ${options.file}.`);
  } else if (options.check) {
    const kept = await readFile(options.file, 'utf8').catch(() => '');
    if (kept.replaceAll('\r\n', '\n') === text) return;
    throw new CommandFailure(
      `${options.file} is not the schema of this program: run \`npm run schema:write\` and look at what has changed.`,
    );
  } else {
    around.print(text.trimEnd());
  }
}
