import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { request } from 'node:http';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { crc32 } from 'node:zlib';
import exifr from 'exifr';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AttachmentStore } from '../../src/features/attachments/attachmentStore.js';
import { httpApi, type HttpApi } from '../support/httpApi.js';
import { cameraPicture } from '../support/picture.js';

interface Upload {
  file: {
    id: string;
    path: string;
    digest: string;
    mediaType: string;
    originalName: string;
    takenAt: string | null;
    widthPixels: number | null;
    heightPixels: number | null;
  };
  attachment: { id: string } | null;
  problems: { code: string; message: string; path: string[] }[];
}

describe.each(['sqlite', 'postgres'] as const)('photographs and papers on %s', (engine) => {
  let api: HttpApi;
  let base: string;
  let rig: string;

  const ask = async (query: string, variables = {}): Promise<any> => {
    const answer = (await (await api.post({ query, variables })).json()) as any;
    expect(answer.errors).toBeUndefined();
    return answer.data;
  };
  const send = (bytes: Buffer | string, query = '', headers = guard): Promise<Response> =>
    fetch(`${base}/attachments${query}`, { method: 'POST', headers, body: bytes as never });
  const upload = async (bytes: Buffer | string, query = ''): Promise<Upload> =>
    (await (await send(bytes, query)).json()) as Upload;
  /** `fetch` would send headers of its own beside these. */
  const statusOf = (method: string, path: string, headers: Record<string, string>) =>
    new Promise<number | undefined>((resolve) => {
      const { hostname, port } = new URL(base);
      request({ hostname, port, path, method, headers }, (answer) => {
        answer.resume();
        resolve(answer.statusCode);
      }).end();
    });
  const guard: Record<string, string> = { 'apollo-require-preflight': 'true' };

  beforeAll(async () => {
    api = await httpApi(engine);
    base = api.url.replace('/graphql', '');
    const made = await ask(
      `mutation { createRig(input: { inventoryNumber: "R-001" }) { rig { id } } }`,
    );
    rig = made.createRig.rig.id;
  });
  afterAll(() => api.close());

  it('hands the papers of a record out page by page, in their order', async () => {
    const { createRig } = await ask(
      `mutation { createRig(input: { inventoryNumber: "R-PAGES" }) { rig { id } } }`,
    );
    const { id } = createRig.rig;
    for (const name of ['one', 'two', 'three']) await upload(name, `?name=${name}.txt&to=${id}`);
    const seen: string[] = [];
    let after: string | null = null;
    do {
      const { node }: any = await ask(
        `query ($id: ID!, $after: String) { node(id: $id) { attachments(first: 2, after: $after) {
           nodes { file { originalName } } pageInfo { hasNextPage endCursor } } } }`,
        { id, after },
      );
      const { nodes, pageInfo } = node.attachments;
      seen.push(...nodes.map(({ file }: any) => file.originalName));
      after = pageInfo.hasNextPage ? pageInfo.endCursor : null;
    } while (after !== null);
    expect(seen).toEqual(['one.txt', 'two.txt', 'three.txt']);
  });

  it('keeps the original byte for byte, and says what the camera wrote of its time', async () => {
    const bytes = await cameraPicture({ orientation: 6 });
    const { file, attachment } = await upload(bytes, `?name=front.jpg&to=${rig}&caption=Front`);
    expect(file).toMatchObject({
      digest: createHash('sha256').update(bytes).digest('hex'),
      mediaType: 'image/jpeg',
      originalName: 'front.jpg',
      takenAt: '2026-03-01T18:30:05+01:00',
      // Taken with the camera on its side: seen upright.
      widthPixels: 80,
      heightPixels: 120,
    });
    const { rig: found } = await ask(
      `query ($id: ID!) { rig: node(id: $id) { attachments { totalCount nodes {
         id caption role file { path picturePath(size: SMALL) byteLength } subject { id } } }
         ... on Rig { coverPicture { id } } } }`,
      { id: rig },
    );
    expect(found.attachments.nodes).toEqual([
      {
        id: attachment?.id,
        caption: 'Front',
        role: 'OVERALL',
        file: {
          path: file.path,
          picturePath: `${file.path}/picture?size=small`,
          byteLength: bytes.length,
        },
        subject: { id: rig },
      },
    ]);
    expect(found.coverPicture.id).toBe(attachment?.id);
    const download = await fetch(base + file.path);
    expect(Buffer.from(await download.arrayBuffer()).equals(bytes)).toBe(true);
    expect(Object.fromEntries(download.headers)).toMatchObject({
      'content-type': 'image/jpeg',
      'content-disposition': 'inline',
      'x-content-type-options': 'nosniff',
      etag: `"${file.digest}"`,
    });
    const known = { 'if-none-match': `"${file.digest}"` };
    expect(await statusOf('GET', file.path, known)).toBe(304);
  });

  it('hands out smaller copies upright, without position or serial number unless asked', async () => {
    const bytes = await cameraPicture({ width: 600, height: 400, orientation: 6, shade: 10 });
    const { file } = await upload(bytes);
    const seen = async (query: string) => {
      const answer = await fetch(`${base}${file.path}/picture?${query}`);
      return { answer, bytes: Buffer.from(await answer.arrayBuffer()) };
    };
    const small = await seen('size=small');
    const { width, height, format, exif } = await sharp(small.bytes).metadata();
    expect({ width, height, format, exif }).toEqual({ width: 160, height: 240, format: 'webp' });
    expect(small.bytes.includes('SN-4471')).toBe(false);
    expect(small.answer.headers.get('etag')).toBe(`"${file.digest}-small"`);
    const withCamera = await seen('size=small&camera=keep');
    const kept = (await sharp(withCamera.bytes).metadata()).exif ?? Buffer.alloc(0);
    expect((await exifr.gps(await asJpeg(kept))).latitude).toBeCloseTo(51.5);
    expect((await seen('size=huge')).answer.status).toBe(404);
  });

  it('keeps the same content once, however often and under whatever name it comes', async () => {
    const bytes = await cameraPicture({ shade: 11 });
    const all = await Promise.all(['a', 'b', 'c', 'd'].map((n) => upload(bytes, `?name=${n}.jpg`)));
    expect(new Set(all.map(({ file }) => file.id)).size).toBe(1);
    const twice = await Promise.all([1, 2].map(() => upload(bytes, `?to=${rig}`)));
    expect(new Set(twice.map(({ attachment }) => attachment?.id)).size).toBe(1);
    expect(await readdir(join(api.attachmentsFolder, 'incoming'))).toEqual([]);
  });

  it('takes a file for what its bytes are, and shows no markup in place', async () => {
    const page = '<html><script>alert(1)</script></html>';
    const drawing = '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>';
    for (const text of [page, drawing, `<?xml version="1.0"?>${drawing}`]) {
      const { file } = await upload(text, '?name=harmless.jpg');
      expect(file.mediaType).toBe('text/plain');
      const { headers } = await fetch(base + file.path);
      expect(headers.get('content-type')).toBe('text/plain; charset=utf-8');
      expect(headers.get('content-disposition')).toBe('attachment; filename=harmless.jpg');
      expect(headers.get('content-security-policy')).toContain('sandbox');
      expect((await fetch(`${base}${file.path}/picture`)).status).toBe(404);
    }
    const pdf = await upload('%PDF-1.7\n%%EOF', `?name=bill.txt&to=${rig}`);
    expect(pdf.file.mediaType).toBe('application/pdf');
  });

  it('refuses what a page elsewhere could send unasked', async () => {
    const bare = await send('x', '', {});
    expect([bare.status, ((await bare.json()) as Upload).problems[0]?.message]).toEqual([
      400,
      'Send the header Apollo-Require-Preflight: true with an upload.',
    ]);
    const foreign = await statusOf('POST', '/attachments', { ...guard, host: 'elsewhere.example' });
    expect(foreign).toBe(421);
  });

  it('refuses what is empty, damaged or out of bounds, keeps none of it, and says why', async () => {
    const before = await readdir(api.attachmentsFolder, { recursive: true });
    const why = async (bytes: Buffer | string, query = '') =>
      (await upload(bytes, query)).problems.map(({ message }) => message).join(' ');
    expect(await why('')).toBe('The file is empty. Choose another.');
    const damaged = (await cameraPicture()).subarray(0, 60);
    expect(await why(damaged)).toContain('damaged');
    const huge = claiming(
      await sharp(await cameraPicture())
        .png()
        .toBuffer(),
      16_000,
      8000,
    );
    expect(await why(huge)).toContain('120 million is the most');
    expect(await why('text', '?to=Rig_01900000-0000-7000-8000-000000000000')).toBe(
      'There is no item with this id.',
    );
    expect(await why('text', '?to=nonsense&role=DETAIL')).toContain('not the id of a record');
    expect(await why('text', '?role=PRETTY')).toContain('Invalid option');
    const store = new AttachmentStore(api.attachmentsFolder);
    const tooLong = Readable.from([Buffer.alloc(600), Buffer.alloc(600)]);
    await expect(store.receive(tooLong, 1000)).rejects.toThrow('the most that is kept');
    const after = await readdir(api.attachmentsFolder, { recursive: true });
    expect(after.filter((name) => /[0-9a-f]{64}/.test(name)).sort()).toEqual(
      before.filter((name) => /[0-9a-f]{64}/.test(name)).sort(),
    );
  });

  it('pairs before and after, keeps an order, and takes off without losing', async () => {
    const finding = (
      await ask(
        `mutation ($input: RecordFindingInput!) { recordFinding(input: $input) { finding { id } } }`,
        { input: { itemId: rig, zone: 'CHASSIS_TOP', severity: 'MINOR', note: 'Rust' } },
      )
    ).recordFinding.finding.id;
    const [first, second] = [
      await upload(await cameraPicture({ shade: 21 }), `?to=${finding}&role=BEFORE`),
      await upload(await cameraPicture({ shade: 22 })),
    ];
    const attach = `mutation ($input: AttachFileInput!) { attachFile(input: $input) {
      attachment { id version role before { id } } problems { message path } } }`;
    const input = { fileId: second.file.id, toId: finding, beforeId: first.attachment?.id };
    const wrong = await ask(attach, { input: { ...input, role: 'DETAIL' } });
    expect(wrong.attachFile.problems[0].path).toEqual(['beforeId']);
    const { attachFile } = await ask(attach, { input });
    expect(attachFile.attachment).toMatchObject({
      role: 'AFTER',
      before: { id: first.attachment?.id },
    });
    const change = `mutation ($input: ChangeAttachmentInput!) { changeAttachment(input: $input) {
      attachment { version ordinal detachedAt } problems { code } } }`;
    const ids = async () =>
      (
        await ask(
          `query ($id: ID!) { node(id: $id) { attachments { nodes { id afters { id } } } } }`,
          { id: finding },
        )
      ).node.attachments.nodes;
    expect((await ids())[0].afters).toEqual([{ id: attachFile.attachment.id }]);
    await ask(change, { input: { id: attachFile.attachment.id, version: 1, ordinal: 0 } });
    expect((await ids())[0].id).toBe(attachFile.attachment.id);
    await ask(change, { input: { id: attachFile.attachment.id, version: 2, isDetached: true } });
    expect(await ids()).toEqual([{ id: first.attachment?.id, afters: [] }]);
    const stored = await readFile(
      join(api.attachmentsFolder, second.file.digest.slice(0, 2), second.file.digest),
    );
    expect(stored.length).toBeGreaterThan(0);
  });
});

/** An EXIF block by itself in the smallest wrapping that a reader accepts. */
async function asJpeg(exif: Buffer): Promise<Buffer> {
  const plain = await sharp({
    create: { width: 8, height: 8, channels: 3, background: '#fff' },
  })
    .jpeg()
    .toBuffer();
  const body =
    exif.subarray(0, 4).toString('latin1') === 'Exif'
      ? exif
      : Buffer.concat([Buffer.from('Exif\0\0'), exif]);
  const head = Buffer.from([
    0xff,
    0xd8,
    0xff,
    0xe1,
    (body.length + 2) >> 8,
    (body.length + 2) & 255,
  ]);
  return Buffer.concat([head, body, plain.subarray(2)]);
}

/** A PNG whose head claims another size than it has. */
function claiming(png: Buffer, width: number, height: number): Buffer {
  const forged = Buffer.from(png);
  forged.writeUInt32BE(width, 16);
  forged.writeUInt32BE(height, 20);
  forged.writeUInt32BE(crc32(forged.subarray(12, 29)), 29);
  return forged;
}
