import { readFileSync } from 'node:fs';
import { CriticalityLevel, diff } from '@graphql-inspector/core';
import { buildSchema, type GraphQLSchema } from 'graphql';
import { describe, expect, it } from 'vitest';

const schemaIn = (file: string): GraphQLSchema => buildSchema(readFileSync(file, 'utf8'));

/** What a reader of the old schema would trip over in the new one, as `Type.field`. */
async function breaking(older: GraphQLSchema, newer: GraphQLSchema): Promise<string[]> {
  const changes = await diff(older, newer);
  return changes
    .filter(({ criticality }) => criticality.level === CriticalityLevel.Breaking)
    .map(({ path, message }) => path ?? message);
}

describe('the schema', () => {
  it('breaks nothing since the last version that CHANGELOG.md does not name', async () => {
    const changelog = readFileSync('CHANGELOG.md', 'utf8');
    const found = await breaking(
      schemaIn('schema/released.graphql'),
      schemaIn('schema/schema.graphql'),
    );
    expect(found.filter((path) => !changelog.includes(path))).toEqual([]);
  });

  it('would be caught at taking a field away', async () => {
    const text = readFileSync('schema/schema.graphql', 'utf8');
    const without = text.replace(/^ {2}serialNumber: String$/gm, '  plateNumber: String');
    const found = await breaking(buildSchema(text), buildSchema(without));
    expect(found).toContain('Rig.serialNumber');
  });
});
