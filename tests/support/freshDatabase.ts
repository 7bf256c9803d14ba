import { randomBytes } from 'node:crypto';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
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

/** A database that copies are made of; nobody may be connected to it. */
export type Original = { engine: 'sqlite'; content: Buffer } | { engine: 'postgres'; name: string };

/** An empty database of its own for a test; `drop` it in the end. */
export function freshDatabase(engine: 'sqlite' | 'postgres'): Promise<FreshDatabase> {
  return engine === 'sqlite' ? freshSqlite() : freshPostgres();
}

/** Copying what was filled once takes a tenth of filling it again. */
export function copyOf(original: Original): Promise<FreshDatabase> {
  return original.engine === 'sqlite'
    ? freshSqlite(original.content)
    : freshPostgres(original.name);
}

/**
 * @param fill opens the database, fills it, and closes it
 * @returns what copies are made of, for as long as the run lasts
 */
export async function originalOf(
  engine: 'sqlite' | 'postgres',
  fill: (url: string) => Promise<void>,
): Promise<Original> {
  const { url, drop } = await freshDatabase(engine);
  await fill(url);
  if (engine === 'postgres') return { engine, name: new URL(url).pathname.slice(1) };
  const content = await readFile(url.slice('sqlite:'.length));
  await drop();
  return { engine, content };
}

async function freshSqlite(content?: Buffer): Promise<FreshDatabase> {
  const folder = await mkdtemp(join(tmpdir(), 'reglow-test-sqlite-'));
  const file = join(folder, 'collection.sqlite');
  if (content) await writeFile(file, content);
  return {
    url: `sqlite:${file}`,
    drop: () => rm(folder, { recursive: true, force: true }),
  };
}

async function freshPostgres(copied = 'template1'): Promise<FreshDatabase> {
  const answer = await fetch(inject('postgresStarter'));
  const serverUrl = await answer.text();
  if (!answer.ok) throw new Error(serverUrl);
  const name = `t_${randomBytes(8).toString('hex')}`;
  await runOn(serverUrl, `CREATE DATABASE ${name} TEMPLATE ${copied} STRATEGY FILE_COPY`);
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
