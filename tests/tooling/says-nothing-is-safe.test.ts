// cspell:words unschädlich risikolos ohne Gefahr benutzen berühren betreiben Gerät
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

/** Everything that a person may come to read, and the names that the API has. */
const read = [
  ['schema', /\.graphql$/],
  ['seed', /\.(yaml|csv|md)$/],
  ['src', /\.(ts|tsx|mjs|html|css|svg|webmanifest)$/],
  ['migrations', /\.ts$/],
] as const;
const papers = ['README.md', 'CHANGELOG.md', 'DEVELOPERS.md', 'package.json'];

/** Words of the web and of the language, which claim nothing of a set. */
const terms =
  /'unsafe-inline'|MAX_SAFE_INTEGER|PARALLEL SAFE|considered safe as defined by the ECMAScript/g;
const claims =
  /\b(un)?safe(ly)?\b|\bharmless\b(?! =|\.replaceAll)|\b(risk|danger)-free\b|\bfool-?proof\b|\b(no|without( any)?) (danger|risk)\b/i;
/** The same in the other language of the pages, whose word also means “certain”. */
const claimsInGerman =
  /(?:^|\W)(?:gefahrlos|ungefährlich|unbedenklich|unschädlich|risikolos|ohne Gefahr)|\b(ist|sind) sicher\b|\bsicher zu (?:benutzen|berühren|betreiben)/i;

describe('nothing that the program says', () => {
  const inFolders = read.flatMap(([folder, name]) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((file) => name.test(file) && !file.includes('node_modules'))
      .map((file) => join(folder, file)),
  );
  const files = [...inFolders, ...papers];

  it('reads every sort of text: pages in both languages, messages, descriptions, seed, papers', () => {
    const wanted = [
      /^src\/web\/texts\/en\//,
      /^src\/web\/texts\/de\//,
      /^src\/domain\/readiness\//,
      /^src\/domain\/calculators\//,
      /^src\/features\/dossier\//,
      /^src\/features\/reports\//,
      /^src\/commands\//,
      /^src\/db\/refusal\.ts$/,
      /^schema\/schema\.graphql$/,
      /^schema\/operations\//,
      /^seed\/hazards\//,
      /^seed\/procedures\//,
      /^seed\/templates\//,
      /^seed\/agents\//,
      /^seed\/demo\//,
      /^seed\/reference\//,
    ];
    for (const place of wanted) expect(files.filter((file) => place.test(file))).not.toEqual([]);
    // A folder of texts that nobody has named here is read too, or the list above is too short.
    const seeds = readdirSync('seed').filter((folder) => folder !== '.gitkeep');
    for (const folder of seeds) {
      expect(files.filter((file) => file.startsWith(join('seed', folder)))).not.toEqual([]);
    }
  });

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
    expect('There is no danger in it.').toMatch(claims);
    expect('Das ist sicher.').toMatch(claimsInGerman);
    expect('Das Gerät ist gefahrlos.').toMatch(claimsInGerman);
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
