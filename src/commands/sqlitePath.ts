import type { Config } from '../config.js';

/** The file in which the collection is kept, or null when it is kept by a server. */
export const sqlitePath = ({ databaseUrl }: Config): string | null =>
  databaseUrl.startsWith('sqlite:') ? databaseUrl.slice('sqlite:'.length) : null;
