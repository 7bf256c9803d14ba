import { mkdir, mkdtemp, rm, utimes, writeFile } from 'node:fs/promises';
import { createServer, request, type IncomingHttpHeaders, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import express from 'express';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { servePages } from '../../src/api/servePages.js';

const script = `export const said = '${'the same again, '.repeat(500)}';`;
let base: string;
let folder: string;
let server: Server;
beforeAll(async () => {
  base = await mkdtemp(join(tmpdir(), 'reglow-test-pages-'));
  folder = join(base, 'pages');
  await mkdir(join(folder, 'assets'), { recursive: true });
  await writeFile(join(folder, 'index.html'), '<!doctype html><title>Page</title>');
  await writeFile(join(base, 'secret.js'), 'outside');
  await writeFile(join(folder, 'assets', 'page-1.js'), script);
  await writeFile(join(folder, 'assets', 'font-1.woff2'), 'a font');
  server = createServer(express().use(servePages(folder)));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
});
afterAll(async () => {
  server.close();
  await rm(base, { recursive: true });
});

interface Sent {
  status: number | undefined;
  headers: IncomingHttpHeaders;
  body: Buffer;
}
/** As it goes over the wire: `fetch` would unpack it. */
const get = (path: string, headers: Record<string, string> = {}): Promise<Sent> =>
  new Promise((resolve, reject) => {
    const { port } = server.address() as AddressInfo;
    const asked = request({ host: '127.0.0.1', port, path, headers }, (answer) => {
      const parts: Buffer[] = [];
      answer.on('data', (part: Buffer) => parts.push(part));
      answer.on('end', () => {
        const { statusCode: status, headers: got } = answer;
        resolve({ status, headers: got, body: Buffer.concat(parts) });
      });
    });
    asked.on('error', reject);
    asked.end();
  });
const packed = { 'accept-encoding': 'gzip, deflate, br' };

describe('a file of the pages', () => {
  it('is sent compressed to who takes it so, and holds the same', async () => {
    const { status, headers, body } = await get('/assets/page-1.js', packed);
    expect(status).toBe(200);
    expect(headers).toMatchObject({
      'content-encoding': 'gzip',
      'content-type': 'text/javascript; charset=utf-8',
      'cache-control': 'public, max-age=31536000, immutable',
      vary: 'Accept-Encoding',
    });
    expect(body.length).toBeLessThan(script.length / 10);
    expect(gunzipSync(body).toString()).toBe(script);
  });

  it('is sent as it is to who does not', async () => {
    const { headers, body } = await get('/assets/page-1.js');
    expect(headers['content-encoding']).toBeUndefined();
    expect(headers.vary).toBe('Accept-Encoding');
    expect(body.toString()).toBe(script);
  });

  it('is not sent again while the receiver has it', async () => {
    const { headers } = await get('/assets/page-1.js', packed);
    const again = await get('/assets/page-1.js', {
      ...packed,
      'if-none-match': headers.etag ?? '',
    });
    expect(again.status).toBe(304);
    expect(again.body).toHaveLength(0);
  });

  it('is compressed anew when it was built anew', async () => {
    const file = join(folder, 'assets', 'page-2.js');
    await writeFile(file, 'first');
    await get('/assets/page-2.js', packed);
    await writeFile(file, 'second');
    await utimes(file, new Date(), new Date(Date.now() + 5000));
    const { body } = await get('/assets/page-2.js', packed);
    expect(gunzipSync(body).toString()).toBe('second');
  });

  it('goes as it is when it is compressed already', async () => {
    const { headers, body } = await get('/assets/font-1.woff2', packed);
    expect(headers['content-encoding']).toBeUndefined();
    expect(body.toString()).toBe('a font');
  });

  it.each(['/assets/..%2f..%2fsecret.js', '/assets/%2e%2e/%2e%2e/secret.js', '/assets/none.js'])(
    '%s is not one',
    async (path) => {
      const { body } = await get(path, packed);
      expect(body.toString()).not.toContain('outside');
    },
  );
});
