import { existsSync } from 'node:fs';
import Database from 'better-sqlite3';
import { Client } from 'pg';
import { describe, expect, it } from 'vitest';
import { freshDatabase } from '../support/freshDatabase.js';

describe('a fresh database', () => {
  it('is a real PostgreSQL 18, and gone after its drop', async () => {
    const database = await freshDatabase('postgres');
    const client = new Client({ connectionString: database.url });
    await client.connect();
    const { rows } = await client.query<{ version: string; addresses: string }>(
      "SELECT version(), current_setting('listen_addresses') AS addresses",
    );
    expect(rows[0]).toMatchObject({
      version: expect.stringMatching(/^PostgreSQL 18\./) as unknown,
      addresses: '127.0.0.1',
    });
    await client.end();

    await database.drop();

    const afterwards = new Client({ connectionString: database.url });
    await expect(afterwards.connect()).rejects.toThrow('does not exist');
  });

  it('shares nothing with another one', async () => {
    const one = await freshDatabase('postgres');
    const other = await freshDatabase('postgres');
    const inOne = new Client({ connectionString: one.url });
    const inOther = new Client({ connectionString: other.url });
    await Promise.all([inOne.connect(), inOther.connect()]);
    await inOne.query('CREATE TABLE rig (id integer)');
    await expect(inOther.query('SELECT * FROM rig')).rejects.toThrow('does not exist');
    await Promise.all([inOne.end(), inOther.end()]);
    await Promise.all([one.drop(), other.drop()]);
  });

  it('is a file of its own on SQLite, gone after its drop', async () => {
    const { url, drop } = await freshDatabase('sqlite');
    const file = url.replace(/^sqlite:/, '');
    new Database(file).exec('CREATE TABLE rig (id INTEGER)').close();
    expect(existsSync(file)).toBe(true);
    await drop();
    expect(existsSync(file)).toBe(false);
  });
});
