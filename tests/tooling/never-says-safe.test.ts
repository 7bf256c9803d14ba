import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const places = ['src', 'seed', 'schema/schema.graphql', 'schema/operations', 'README.md'];

/** Whole words alone: `safeInteger` and "safety" claim nothing about a set. */
const claim = /\bsafe(ly)?\b|\b(harmless|risk[- ]free|no danger|without danger)\b/i;

/** What graphql-scalars itself says of numbers that a double holds exactly. */
const aboutNumbers = /values that are considered safe as defined by the ECMAScript specification/;

const filesIn = (place: string): string[] =>
  statSync(place).isDirectory()
    ? readdirSync(place).flatMap((name) => filesIn(join(place, name)))
    : [place];

/** Lines that say of anything that it may be touched, connected or used without care. */
const claimsIn = (text: string): string[] =>
  text.split('\n').filter((line) => claim.test(line.replace(aboutNumbers, '')));

describe('Reglow', () => {
  it('never says that anything is safe: no text, message, word of a list or field', () => {
    const readable = places
      .flatMap(filesIn)
      .filter((path) => /\.(tsx?|mjs|css|html|graphql|md|ya?ml|csv|json|txt)$/.test(path));
    expect(readable.length).toBeGreaterThan(500);
    const found = readable.flatMap((path) =>
      claimsIn(readFileSync(path, 'utf8')).map((line) => `${path}: ${line.trim()}`),
    );
    expect(found).toEqual([]);
  });

  it('would be caught if it did', () => {
    expect(claimsIn('It is safe to touch.\nSafety first.\nsafeInteger')).toEqual([
      'It is safe to touch.',
    ]);
    expect(claimsIn('"Switch it on safely."')).toHaveLength(1);
  });
});
