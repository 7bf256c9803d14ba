import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { HazardKind } from '../../src/features/hazards/hazardKind.js';
import { loadHazardCatalogue } from '../../src/features/hazards/loadHazardCatalogue.js';
import { seedFolder } from '../../src/features/hazards/seedFolder.js';

const shipped = seedFolder('hazards');

describe('the hazard catalogue', () => {
  const catalogue = loadHazardCatalogue(shipped);

  it.each(Object.values(HazardKind))('has a file on %s with cautions and a source', (kind) => {
    const guide = catalogue.get(kind);
    expect(guide?.cautions.length).toBeGreaterThan(0);
    expect(guide?.protection.length).toBeGreaterThan(0);
    expect(guide?.source.length).toBeGreaterThan(10);
    expect(guide?.advice).toMatch(/local codes.*qualified help/);
  });

  it('never claims that anything is without danger', () => {
    for (const file of readdirSync(shipped)) {
      const text = readFileSync(join(shipped, file), 'utf8');
      // "safety", as in the name of a body or a manual that is a source, is no claim.
      expect(text, file).not.toMatch(/\b(un)?safe(ly)?\b|\bharmless\b|\bno (danger|risk)\b/i);
    }
  });
});

describe('a broken hazard catalogue', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'reglow-hazards-'));
    cpSync(shipped, folder, { recursive: true });
  });
  afterEach(() => {
    rmSync(folder, { recursive: true, force: true });
  });
  const write = (file: string, text: string): void => {
    writeFileSync(join(folder, file), text);
  };
  const whole = (file: string): string => readFileSync(join(folder, file), 'utf8');

  it('names the file and what is missing in it', () => {
    write('mercury.yaml', whole('mercury.yaml').replace(/^source:.*$/m, ''));
    expect(() => loadHazardCatalogue(folder)).toThrow(/mercury\.yaml is broken: [^]*source/);
  });

  it('names the file that cannot be read as YAML', () => {
    write('mercury.yaml', 'kind: [');
    expect(() => loadHazardCatalogue(folder)).toThrow(/mercury\.yaml is broken/);
  });

  it('names the kind that has no file', () => {
    rmSync(join(folder, 'mercury.yaml'));
    expect(() => loadHazardCatalogue(folder)).toThrow(/no file for mercury\.yaml/);
  });

  it('wants each file to be called as its kind', () => {
    write('quicksilver.yaml', whole('mercury.yaml'));
    expect(() => loadHazardCatalogue(folder)).toThrow(/call the file mercury\.yaml/);
  });
});

describe('the seed folder', () => {
  it('is at the root of the package, from the sources and from what is compiled', () => {
    const compiled = join(import.meta.dirname, '../../dist/src/features/hazards');
    expect(seedFolder('hazards', compiled)).toBe(shipped);
    expect(() => seedFolder('hazards', '/')).toThrow(/package\.json/);
  });
});
