import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, it } from 'vitest';
import { packageFolder } from '../../src/features/packageFolder.js';

interface BuiltFile {
  file: string;
  isEntry?: boolean;
  isDynamicEntry?: boolean;
  imports?: string[];
  css?: string[];
}

const folder = packageFolder('dist-web');
// Through a telephone at a fair: what must come before anything is seen.
const mostBytes = 250_000;

let files: Record<string, BuiltFile>;
beforeAll(() => {
  if (!existsSync(join(folder, 'files.json'))) {
    throw new Error('The pages are not built: run `npm run build` first.');
  }
  files = JSON.parse(readFileSync(join(folder, 'files.json'), 'utf8')) as typeof files;
});

const isFont = (file: string): boolean => file.endsWith('.woff2');
/** A font is compressed already. */
const sentBytes = (file: string): number => {
  const bytes = readFileSync(join(folder, file));
  return isFont(file) ? bytes.length : gzipSync(bytes).length;
};

/** A part with all that it cannot run without. */
function withImports(name: string, known = new Set<string>()): Set<string> {
  const part = files[name];
  if (!part) throw new Error(`${name} is not among the built files.`);
  if (known.has(part.file)) return known;
  known.add(part.file);
  for (const style of part.css ?? []) known.add(style);
  for (const imported of part.imports ?? []) withImports(imported, known);
  return known;
}

/** The fonts that a text in English or German asks for: the styles name one file a script. */
function latinFonts(): string[] {
  const page = readFileSync(join(folder, 'index.html'), 'utf8');
  const styles = [...page.matchAll(/href="\/(assets\/[^"]+\.css)"/g)].map(([, file]) =>
    readFileSync(join(folder, file ?? ''), 'utf8'),
  );
  const faces = styles.join('').match(/@font-face\s*\{[^}]*\}/g) ?? [];
  return faces
    .filter((face) => /U\+(\?\?|0{1,4}-0{0,2}FF)/i.test(face))
    .flatMap((face) => [...face.matchAll(/url\(["']?\/?(assets\/[^"')]+)/g)])
    .map(([, file]) => file ?? '');
}

const sumOf = (parts: Iterable<string>): number =>
  [...parts].reduce((sum, file) => sum + sentBytes(file), 0);

describe('what a page sends before it can be seen', () => {
  it('is under 250 kB, whichever page is opened first', () => {
    const fonts = latinFonts();
    expect(fonts).toHaveLength(1);
    // One language comes, whichever it is.
    const texts = ['texts/en.ts', 'texts/de.ts'].map((name) => withImports(name));
    const longest = texts.toSorted((one, other) => sumOf(other) - sumOf(one))[0] ?? [];
    const always = new Set(['index.html', ...withImports('index.html'), ...longest, ...fonts]);
    const sizes = new Map([['without a page', sumOf(always)]]);
    const pages = Object.keys(files).filter((name) => name.startsWith('pages/'));
    expect(pages.length).toBeGreaterThan(8);
    for (const page of pages) {
      sizes.set(page, sumOf(new Set([...always, ...withImports(page)])));
    }
    const lines = [...sizes].map(([page, bytes]) => `${Math.round(bytes / 1000)} kB ${page}`);
    console.log(`First load, compressed:\n${lines.join('\n')}`);
    expect([...sizes].filter(([, bytes]) => bytes > mostBytes)).toEqual([]);
  });

  it('is all there is: what the page names is what was counted', () => {
    const page = readFileSync(join(folder, 'index.html'), 'utf8');
    const named = [...page.matchAll(/(?:src|href)="\/(assets\/[^"]+)"/g)].map(([, file]) => file);
    expect(new Set(named)).toEqual(withImports('index.html'));
  });
});
