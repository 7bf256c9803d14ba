import { existsSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { adoptPackagesInstalledByHand, packagesAreCurrent } from '../../src/prepare/packages.mjs';
import type { ProjectPaths } from '../../src/prepare/projectPaths.mjs';
import { projectPaths } from '../../src/prepare/projectPaths.mjs';

const compiledPackage = resolve(import.meta.dirname, '../../node_modules/better-sqlite3');
const asked = {
  '': { version: '1.0.0' },
  'node_modules/better-sqlite3': { version: '12.11.1' },
  'node_modules/for-another-machine': { version: '1.0.0', optional: true },
};
const installed = { 'node_modules/better-sqlite3': { version: '12.11.1' } };
let paths: ProjectPaths;

beforeEach(() => {
  paths = projectPaths(mkdtempSync(join(tmpdir(), 'reglow-test-clone-')));
  mkdirSync(paths.packages);
  writeFileSync(paths.lockFile, JSON.stringify({ packages: asked }));
});

afterEach(() => rmSync(paths.root, { recursive: true, force: true }));

function install(packages: object): void {
  const place = join(paths.packages, 'better-sqlite3');
  if (!existsSync(place)) symlinkSync(compiledPackage, place, 'junction');
  writeFileSync(paths.installedLock, JSON.stringify({ packages }));
}

describe('packages that a person installed', () => {
  it('are taken as they are when nothing that the lock file asks for misses', () => {
    install(installed);
    expect(packagesAreCurrent(paths)).toBe(false);
    expect(adoptPackagesInstalledByHand(paths)).toBe(true);
    expect(packagesAreCurrent(paths)).toBe(true);
  });

  it('are not taken when an install was cut off: npm writes its own list last', () => {
    symlinkSync(compiledPackage, join(paths.packages, 'better-sqlite3'), 'junction');
    expect(adoptPackagesInstalledByHand(paths)).toBe(false);
    expect(packagesAreCurrent(paths)).toBe(false);
  });

  it('are not taken when one is of another version', () => {
    install({ 'node_modules/better-sqlite3': { version: '12.11.0' } });
    expect(adoptPackagesInstalledByHand(paths)).toBe(false);
  });

  it('are not taken when a folder was removed since', () => {
    install(installed);
    rmSync(join(paths.packages, 'better-sqlite3'));
    expect(adoptPackagesInstalledByHand(paths)).toBe(false);
  });

  it('are not taken when the compiled part was not built', () => {
    mkdirSync(join(paths.packages, 'better-sqlite3'));
    install(installed);
    expect(adoptPackagesInstalledByHand(paths)).toBe(false);
  });

  it('are looked at anew when npm changed them or the lock file changed', () => {
    install(installed);
    adoptPackagesInstalledByHand(paths);
    writeFileSync(paths.installedLock, JSON.stringify({ packages: {} }));
    expect(packagesAreCurrent(paths)).toBe(false);
    expect(adoptPackagesInstalledByHand(paths)).toBe(false);

    install(installed);
    expect(packagesAreCurrent(paths)).toBe(true);
    writeFileSync(
      paths.lockFile,
      JSON.stringify({ packages: { ...asked, 'node_modules/new': {} } }),
    );
    expect(packagesAreCurrent(paths)).toBe(false);
  });
});
