import { randomBytes } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Client } from 'pg';
import { inject } from 'vitest';

export interface FreshDatabase {
  /** `sqlite:/folder/file.sqlite` or `postgres://…`; empty, without schema. */
  url: string;
  /** Removes it with all that is in it; close your connections first. */
  drop(): Promise<void>;
}

/** An empty database of its own for a test file; `drop` it in `afterAll`. */
export function freshDatabase(engine: 'sqlite' | 'postgres'): Promise<FreshDatabase> {
  return engine === 'sqlite' ? freshSqlite() : freshPostgres();
}

async function freshSqlite(): Promise<FreshDatabase> {
  const folder = await mkdtemp(join(tmpdir(), 'reglow-test-sqlite-'));
  return {
    url: `sqlite:${join(folder, 'collection.sqlite')}`,
    drop: () => rm(folder, { recursive: true, force: true }),
  };
}

async function freshPostgres(): Promise<FreshDatabase> {
  const answer = await fetch(inject('postgresStarter'));
  const serverUrl = await answer.text();
  if (!answer.ok) throw new Error(serverUrl);
  const name = `t_${randomBytes(8).toString('hex')}`;
  await runOn(serverUrl, `CREATE DATABASE ${name}`);
  const url = new URL(serverUrl);
  url.pathname = `/${name}`;
  return {
    url: url.href,
    // Forced: a connection that a failed test left open must not keep the database.
    drop: () => runOn(serverUrl, `DROP DATABASE ${name} WITH (FORCE)`),
  };
}

async function runOn(serverUrl: string, statement: string): Promise<void> {
  const client = new Client({ connectionString: serverUrl });
  await client.connect();
  try {
    await client.query(statement);
  } finally {
    await client.end();
  }
}
