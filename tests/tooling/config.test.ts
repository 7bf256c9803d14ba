import { describe, expect, it } from 'vitest';
import { CommandFailure } from '../../src/commands/commandFailure.js';
import { explainFailure } from '../../src/commands/explainFailure.js';
import { readConfig } from '../../src/config.js';

const messageOf = (environment: NodeJS.ProcessEnv): string => {
  try {
    readConfig(environment);
  } catch (error) {
    expect(error).toBeInstanceOf(CommandFailure);
    return explainFailure(error);
  }
  throw new Error('was not refused');
};

describe('the settings', () => {
  it.each(['a', '-1', '70000', '80.5'])('refuse the port %s with what to mend', (port) => {
    expect(messageOf({ REGLOW_PORT: port })).toBe(
      `REGLOW_PORT must be a port from 0 to 65535, not "${port}".`,
    );
  });

  it.each(['', 'sqlite:', 'file.sqlite', 'postgres:db'])('refuse the database "%s"', (database) => {
    expect(messageOf({ REGLOW_DATABASE: database })).toContain('REGLOW_DATABASE must begin with');
  });

  it('take both ways to write a PostgreSQL address', () => {
    for (const databaseUrl of ['postgres://host/db', 'postgresql://host/db', 'sqlite:a.sqlite']) {
      expect(readConfig({ REGLOW_DATABASE: databaseUrl })).toMatchObject({ databaseUrl });
    }
  });
});
