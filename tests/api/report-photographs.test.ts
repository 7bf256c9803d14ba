import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { globalId } from '../../src/api/kit/globalId.js';
import { contextOf } from '../../src/api/serveApi.js';
import { attachFile } from '../../src/features/attachments/attachFile.js';
import type { AttachmentRole } from '../../src/features/attachments/attachmentRole.js';
import { AttachmentStore } from '../../src/features/attachments/attachmentStore.js';
import { takeInFile } from '../../src/features/attachments/takeInFile.js';
import { reads } from '../../src/features/reads.js';
import { progressText, type ReportScope } from '../../src/features/reports/reportTexts.js';
import { shedStory, type ShedStory } from '../support/shedStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const may = { from: '2026-05-01', to: '2026-05-31', itemId: null };

describe.each(['sqlite', 'postgres'] as const)('photographs in a report on %s', (engine) => {
  let api: TestApi;
  let story: ShedStory;
  let folder: string;
  let store: AttachmentStore;

  interface Shot {
    toId: string;
    colour: string;
    role: AttachmentRole;
    caption?: string;
    /** By the camera. */
    takenAt?: string;
    attachedAt?: string;
    beforeId?: string;
  }
  /** As a telephone takes it: with its time, where it stood, and whose it is. */
  const attach = async (shot: Shot): Promise<string> => {
    const { toId, colour, role, caption = null, takenAt, beforeId = null } = shot;
    const picture = await sharp({
      create: { width: 320, height: 240, channels: 3, background: colour },
    })
      .jpeg()
      .withExif({
        IFD0: { Artist: 'Secretive Soul', Model: 'Telephone' },
        IFD2: takenAt === undefined ? {} : { DateTimeOriginal: takenAt },
        IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1' },
      })
      .toBuffer();
    const now = shot.attachedAt ?? '2026-06-01T10:00:00.000Z';
    const act = { action: 'attach', actorId: null, now };
    const bytes = { bytes: Readable.from([picture]), name: `${colour}.jpg` };
    const { result } = await takeInFile(api.database, store, act, bytes, (work, id) =>
      attachFile(
        work,
        { toId, role, caption, beforeId, fileId: globalId('StoredFile', id) },
        reads,
      ),
    );
    return globalId('Attachment', result);
  };
  const report = (format: 'HTML' | 'MARKDOWN', scope: Partial<ReportScope> = {}) =>
    progressText(contextOf(api.database, api.nowMs, folder), { ...may, ...scope }, format);

  beforeAll(async () => {
    api = await testApi(engine);
    story = await shedStory(api);
    folder = await mkdtemp(join(tmpdir(), 'reglow-test-report-'));
    store = new AttachmentStore(folder);
    const projectId = await story.project('Cabinet');
    const [taskId = ''] = await story.tasks(projectId, [{ title: 'Strip <i>& stain' }]);
    const beforeId = await attach({
      toId: taskId,
      colour: 'black',
      role: 'BEFORE',
      caption: 'Rust, as Ilse found it',
      takenAt: '2026:04:02 09:00:00',
    });
    await attach({
      toId: taskId,
      colour: 'white',
      role: 'AFTER',
      caption: '<script>alert(1)</script> [bright](http://x) again',
      takenAt: '2026:05:09 09:00:00',
      beforeId,
    });
    await attach({
      toId: story.otherRigId,
      colour: 'red',
      role: 'DETAIL',
      attachedAt: '2026-05-31T21:30:00.000Z',
    });
    await attach({ toId: story.rigId, colour: 'blue', role: 'DETAIL', caption: 'In June' });
    await attach({
      toId: story.rigId,
      colour: 'green',
      role: 'MARKING',
      caption: 'Serial plate',
      takenAt: '2026:05:09 09:00:00',
    });
  });
  afterAll(async () => {
    await api?.close();
    if (folder) await rm(folder, { recursive: true, force: true });
  });

  it('stand in the page itself, the one from before beside the one from after', async () => {
    const html = await report('HTML');
    const images = [...html.matchAll(/<img src="data:image\/jpeg;base64,([^"]+)" alt="([^"]*)">/g)];
    expect(images).toHaveLength(3);
    expect(html.match(/src=|href=/g)).toHaveLength(3);
    const [row = ''] = html.split('<div class="pictures">').slice(1);
    expect(row.indexOf('Before: ')).toBeGreaterThan(0);
    expect(row.indexOf('Before: ')).toBeLessThan(row.indexOf('After: '));
    expect(row).toContain('R-001, Strip &lt;i&gt;&amp; stain. ');
    expect(row).toContain('(2026-04-02)');
    expect(row).toContain('(2026-05-09)');
    const [dark, bright] = images.map(([, data = '']) => Buffer.from(data, 'base64'));
    expect((await sharp(dark).stats()).dominant.r).toBeLessThan(50);
    expect((await sharp(bright).stats()).dominant.r).toBeGreaterThan(200);
  });

  it('give away nothing that the camera wrote, no plate, no name and no tag', async () => {
    const html = await report('HTML');
    for (const [, data = ''] of html.matchAll(/base64,([^"]+)"/g)) {
      const { exif, xmp, iptc } = await sharp(Buffer.from(data, 'base64')).metadata();
      expect([exif, xmp, iptc]).toEqual([undefined, undefined, undefined]);
    }
    const [inHtml, inMarkdown] = [html, await report('MARKDOWN')];
    for (const text of [inHtml, inMarkdown]) {
      expect(text).not.toMatch(/Ilse|Serial plate|In June/);
    }
    expect(inHtml).toContain('Rust, as [withheld] found it');
    expect(inMarkdown).toContain('Rust, as \\[withheld\\] found it');
    expect(inHtml).not.toContain('<script>');
    expect(inHtml).toContain('&lt;script&gt;');
    expect(inMarkdown).toMatch(
      /^- \[R-001, .*\]\(\/attachments\/[0-9a-f]{64}\/picture\?size=medium\)$/m,
    );
    expect(inMarkdown).not.toMatch(/[^\\]\]\(http/);
  });

  it('count the last day by the clock at the bench, and are of one item where one is named', async () => {
    const html = await report('HTML', { itemId: story.otherRigId.slice('Rig_'.length) });
    expect(html.match(/<img /g)).toHaveLength(1);
    expect(html).toContain('R-002. detail (2026-05-31)');
    const march = await report('HTML', { from: '2026-03-01', to: '2026-03-31' });
    expect(march).toContain('No photograph was taken or attached.');
  });

  it('are told of when their file is gone', async () => {
    await rm(folder, { recursive: true, force: true });
    const html = await report('HTML');
    expect(html).toContain('3 cannot be read from where they are kept.');
    expect(html).toContain('(2026-05-09)');
    expect(html).not.toContain('<img');
  });
});
