import type { MigrationInterface, QueryRunner } from 'typeorm';

/**
 * One text an item, already folded to plain words (see `src/db/searchTokens.ts`), so that both
 * engines split it alike: FTS5 on SQLite, `tsvector` with the `simple` configuration on PostgreSQL.
 */
export class Search1764000000006 implements MigrationInterface {
  name = 'Search1764000000006';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(
      `CREATE TABLE item_text (
        item_id varchar(36) PRIMARY KEY NOT NULL REFERENCES item (id),
        body text NOT NULL
      )`,
    );
    const statements = runner.connection.options.type === 'postgres' ? postgres : sqlite;
    for (const statement of statements) await runner.query(statement);
  }

  async down(runner: QueryRunner): Promise<void> {
    if (runner.connection.options.type !== 'postgres') {
      await runner.query('DROP TABLE item_text_index');
    }
    await runner.query('DROP TABLE item_text');
  }
}

const postgres = [
  `CREATE INDEX item_text_words ON item_text USING gin (to_tsvector('simple', body))`,
];

const sqlite = [
  `CREATE VIRTUAL TABLE item_text_index USING fts5 (
    body, content = 'item_text', tokenize = 'unicode61 remove_diacritics 0'
  )`,
  `CREATE TRIGGER item_text_added AFTER INSERT ON item_text BEGIN
    INSERT INTO item_text_index (rowid, body) VALUES (new.rowid, new.body);
  END`,
  `CREATE TRIGGER item_text_removed AFTER DELETE ON item_text BEGIN
    INSERT INTO item_text_index (item_text_index, rowid, body)
    VALUES ('delete', old.rowid, old.body);
  END`,
  `CREATE TRIGGER item_text_changed AFTER UPDATE ON item_text BEGIN
    INSERT INTO item_text_index (item_text_index, rowid, body)
    VALUES ('delete', old.rowid, old.body);
    INSERT INTO item_text_index (rowid, body) VALUES (new.rowid, new.body);
  END`,
];
