import type { MigrationInterface, QueryRunner } from 'typeorm';

/**
 * What `src/db/naturalKey.ts` and `src/db/foldedText.ts` say, for statements on PostgreSQL. On
 * SQLite each connection brings them along (`src/db/addSqliteFunctions.ts`).
 */
export class TextFunctions1764200000100 implements MigrationInterface {
  name = 'TextFunctions1764200000100';

  async up(runner: QueryRunner): Promise<void> {
    if (runner.connection.options.type !== 'postgres') return;
    for (const statement of functions) await runner.query(statement);
  }

  async down(runner: QueryRunner): Promise<void> {
    if (runner.connection.options.type !== 'postgres') return;
    await runner.query('DROP FUNCTION natural_key(text)');
    await runner.query('DROP FUNCTION folded_text(text)');
  }
}

const functions = [
  String.raw`CREATE FUNCTION natural_key(text) RETURNS text LANGUAGE sql IMMUTABLE PARALLEL SAFE AS
  $$ SELECT regexp_replace(
    regexp_replace($1, '([0-9]+)', '0000000000\1', 'g'), '[0-9]*([0-9]{10})', '\1', 'g') $$`,
  String.raw`CREATE FUNCTION folded_text(text) RETURNS text LANGUAGE sql IMMUTABLE PARALLEL SAFE AS
  $$ SELECT lower(regexp_replace(normalize($1, NFKD),
    '[\u0300-\u036f\u1ab0-\u1aff\u1dc0-\u1dff\u20d0-\u20ff\ufe20-\ufe2f]', '', 'g')) $$`,
];
