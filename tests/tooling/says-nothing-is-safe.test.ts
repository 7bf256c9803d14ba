import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

/** Everything that a person may come to read, and the names that the API has. */
const read = [
  ['schema', /\.graphql$/],
  ['seed', /\.(yaml|csv|md)$/],
  ['src', /\.(ts|tsx|mjs|html|css)$/],
] as const;

/** Words of the web and of the language, which claim nothing of a set. */
const terms = /'unsafe-inline'|MAX_SAFE_INTEGER|considered safe as defined by the ECMAScript/g;
const claims = /\b(un)?safe(ly)?\b|\bharmless\b(?! =|\.replaceAll)|\brisk-free\b/i;
/** The same in the other language of the pages, whose word also means “certain”. */
const claimsInGerman = /(?:^|\W)(?:gefahrlos|ungefährlich|unbedenklich)|\b(ist|sind) sicher\b/i;

describe('nothing that the program says', () => {
  const files = read.flatMap(([folder, name]) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((file) => name.test(file) && !file.includes('node_modules'))
      .map((file) => join(folder, file)),
  );

  it('calls anything safe: no message, field, enum, text or file of the seed', () => {
    expect(files.length).toBeGreaterThan(500);
    const found = files.flatMap((file) => {
      const text = readFileSync(file, 'utf8').replace(terms, '');
      const claim = claims.exec(text) ?? (file.includes('texts/de/') && claimsInGerman.exec(text));
      return claim
        ? [`${file}: ${text.slice(Math.max(0, claim.index - 40), claim.index + 20)}`]
        : [];
    });
    expect(found).toEqual([]);
  });

  it('would be caught saying so, in names of the API as in sentences', () => {
    expect('This set is safe to use.').toMatch(claims);
    expect(names('isSafeToConnect')).toMatch(claims);
    expect('Das ist sicher.').toMatch(claimsInGerman);
  });

  it('has a name in the API with that word, but for the integers of JavaScript', () => {
    const schema = readFileSync('schema/schema.graphql', 'utf8').replace(terms, '');
    const found = (schema.match(/\b\w*safe\w*\b/gi) ?? []).filter((word) =>
      claims.test(names(word)),
    );
    expect([...new Set(found)].filter((word) => word !== 'SafeInt')).toEqual([]);
  });
});

/** The words of a name in camel case. */
const names = (name: string): string =>
  name.replace(/([a-z])([A-Z])/g, '$1 $2').replaceAll('_', ' ');
