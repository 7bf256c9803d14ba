import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AttachmentStore } from '../../src/features/attachments/attachmentStore.js';
import { loadDemo } from '../../src/features/demo/loadDemo.js';
import {
  usuallyWithheld,
  type DossierFormat,
  type DossierReader,
} from '../../src/features/dossier/dossierReader.js';
import { writeDossier } from '../../src/features/dossier/writeDossier.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe('the dossier of an item', () => {
  let api: TestApi;
  let folder: string;
  beforeAll(async () => {
    api = await testApi('sqlite');
    await loadDemo(api.database, 'seed/demo', new Date(api.nowMs));
    folder = await mkdtemp(join(tmpdir(), 'reglow-test-dossier-'));
  }, 120_000);
  afterAll(async () => {
    await api.close();
    await rm(folder, { recursive: true, force: true });
  });

  const written = async (reader: DossierReader, format: DossierFormat): Promise<Buffer> =>
    (await writeDossier(
      api.database,
      new AttachmentStore(folder),
      'R-009',
      { reader, withheld: new Set(usuallyWithheld[reader]), statedOn: '2026-06-01' },
      { format, paper: 'A4' },
    )) ?? Buffer.alloc(0);

  it('is the same bytes for the same records', async () => {
    for (const format of ['HTML', 'PDF'] as const) {
      const [first, second] = [await written('HEIR', format), await written('HEIR', format)];
      expect(first.equals(second)).toBe(true);
      expect(first.length).toBeGreaterThan(2000);
      if (process.env['DOSSIER_OUT']) {
        await writeFile(`${process.env['DOSSIER_OUT']}.${format.toLowerCase()}`, first);
      }
    }
  }, 60_000);
});
