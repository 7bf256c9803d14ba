import type { Engine } from './dialect.js';
import { searchTokens } from './searchTokens.js';

/**
 * What a person typed, as the engine's own query: every word must begin some word of the item.
 * @returns null when there is no word to look for.
 */
export function searchParameter(engine: Engine, typed: string): string | null {
  const tokens = searchTokens(typed);
  if (tokens.length === 0) return null;
  return engine === 'sqlite'
    ? tokens.map((token) => `"${token}"*`).join(' ')
    : tokens.map((token) => `'${token}':*`).join(' & ');
}
