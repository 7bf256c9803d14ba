import { setTimeout as pause } from 'node:timers/promises';
import pg from 'pg';
import type { DataSource } from 'typeorm';

/** Any fixed number: two programs that bring one database up to date take turns by it. */
const turn = 4_600_202_611;
const attempts = 5;

/** Brings the tables up to date, also when another program does so at the same moment. */
export async function migrate(dataSource: DataSource, url: string): Promise<void> {
  if (dataSource.options.type === 'postgres') {
    const client = new pg.Client({ connectionString: url });
    await client.connect();
    try {
      await client.query('SELECT pg_advisory_lock($1)', [turn]);
      await dataSource.runMigrations();
    } finally {
      // The lock goes with the session.
      await client.end();
    }
    return;
  }
  for (let attempt = 1; ; attempt++) {
    try {
      await dataSource.runMigrations();
      return;
    } catch (error) {
      // SQLite has no such lock: the one who came second finds tables half there, or the file
      // busy. All steps are one transaction, so after a moment they are there whole.
      if (attempt === attempts) throw error;
      await pause(200 * attempt);
    }
  }
}
