import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { ESLint } from 'eslint';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { staticStages } from '../support/stages.mjs';

const root = resolve(import.meta.dirname, '../..');

/** A toy house under the real settings: rules by path look at where a file lies, not what it is. */
const house = {
  'src/main.ts': `import { serve } from './commands/serve.js';\nserve();\n`,
  'src/commands/serve.ts': `import { server } from '../api/server.js';\nexport const serve = () => server;\n`,
  'src/api/server.ts': `import { rigs } from '../features/rigs/rigs.js';\nexport const server = rigs;\n`,
  'src/api/kit/page.ts': `export const page = 1;\n`,
  'src/features/rigs/rigs.ts': `import { page } from '../../api/kit/page.js';\nimport { reader } from '../../db/reader.js';\nexport const rigs = page + reader;\n`,
  'src/db/reader.ts': `import { hours } from '../domain/hours.js';\nexport const reader = hours;\n`,
  'src/domain/hours.ts': `import { DateTime } from 'luxon';\nexport const hours = DateTime.fromISO('1957-10-04').hour;\n`,
  'src/domain/unlawful.ts': `import { reader } from '../db/reader.js';\nexport const unlawful = reader;\n`,
  'src/domain/unlawfulPackage.ts': `import { z } from 'zod';\nexport const unlawfulPackage = z;\n`,
  'src/domain/unlawfulClock.ts': `export const unlawfulClock = new Date();\n`,
  'src/db/unlawful.ts': `import { rigs } from '../features/rigs/rigs.js';\nexport const unlawful = rigs;\n`,
  'src/features/rigs/unlawful.ts': `import { server } from '../../api/server.js';\nexport const unlawful = server;\n`,
  'src/api/unlawful.ts': `import { serve } from '../commands/serve.js';\nexport const unlawful = serve;\n`,
  'src/api/kit/unlawful.ts': `import { rigs } from '../../features/rigs/rigs.js';\nexport const unlawful = rigs;\n`,
  'src/web/unlawful.ts': `import { hours } from '../domain/hours.js';\nexport const unlawful = hours;\n`,
  'src/db/unlawfulDefault.ts': `export default 1;\n`,
};

let folder: string;
let rulesByFile: Map<string, string[]>;

beforeAll(async () => {
  mkdirSync(join(root, '.tmp'), { recursive: true });
  folder = mkdtempSync(join(root, '.tmp', 'house-'));
  for (const [file, text] of Object.entries(house)) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), text);
  }
  for (const settings of [
    'eslint.config.js',
    'tsconfig.json',
    'src/web/tsconfig.json',
    'package.json',
  ]) {
    cpSync(join(root, settings), join(folder, settings));
  }
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'), 'junction');
  const results = await new ESLint({ cwd: folder }).lintFiles(['src']);
  rulesByFile = new Map(
    results.map(({ filePath, messages }) => [
      filePath.slice(folder.length + 1).replaceAll('\\', '/'),
      messages.map(({ ruleId, message }) => ruleId ?? message),
    ]),
  );
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the lint rules of the house', () => {
  it.each([
    ['src/domain/unlawful.ts', 'import-x/no-restricted-paths'],
    ['src/domain/unlawfulPackage.ts', 'no-restricted-imports'],
    ['src/domain/unlawfulClock.ts', 'no-restricted-syntax'],
    ['src/db/unlawful.ts', 'import-x/no-restricted-paths'],
    ['src/features/rigs/unlawful.ts', 'import-x/no-restricted-paths'],
    ['src/api/unlawful.ts', 'import-x/no-restricted-paths'],
    ['src/api/kit/unlawful.ts', 'import-x/no-restricted-paths'],
    ['src/web/unlawful.ts', 'import-x/no-restricted-paths'],
    ['src/db/unlawfulDefault.ts', 'import-x/no-default-export'],
  ])('refuse %s by %s', (file, rule) => {
    expect(rulesByFile.get(file)).toContain(rule);
  });

  it.each(Object.keys(house).filter((file) => !file.includes('unlawful')))(
    'let pass what runs along the arrows: %s',
    (file) => {
      expect(rulesByFile.get(file)).toEqual([]);
    },
  );
});

describe('the stage that looks for circles of imports', () => {
  const lookFor = (files: Record<string, string>) => {
    const place = mkdtempSync(join(tmpdir(), 'reglow-test-circles-'));
    for (const name of ['src', 'tests', 'migrations']) mkdirSync(join(place, name));
    for (const [file, text] of Object.entries(files)) writeFileSync(join(place, file), text);
    const args = staticStages.find(({ name }) => name === 'cycles')?.args ?? [];
    const { status, stdout } = spawnSync(process.execPath, args, { cwd: place, encoding: 'utf8' });
    rmSync(place, { recursive: true, force: true });
    return { status, stdout };
  };
  const egg = `import { hen } from './hen.js';\nexport const egg = () => hen;\n`;

  it('names both ends of one', () => {
    const hen = `import { egg } from './egg.js';\nexport const hen = () => egg;\n`;
    const { status, stdout } = lookFor({ 'src/egg.ts': egg, 'src/hen.ts': hen });
    expect(status).toBe(1);
    expect(stdout).toContain('src/hen.ts');
    expect(stdout).toContain('src/egg.ts');
  });

  it('lets pass what runs one way', () => {
    const { status } = lookFor({ 'src/egg.ts': egg, 'src/hen.ts': 'export const hen = 1;\n' });
    expect(status).toBe(0);
  });
});
