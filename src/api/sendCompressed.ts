import { readFile, stat } from 'node:fs/promises';
import { basename, extname, join } from 'node:path';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import type { RequestHandler } from 'express';

const compress = promisify(gzip);
/** What shrinks; pictures and fonts are compressed already. */
const texts = new Set(['.js', '.css', '.svg', '.json']);

/**
 * Sends the texts of one folder compressed to who takes them so, each compressed once and kept: the
 * pages are a third of their size through a telephone. All else goes on to what comes after.
 * @param cacheControl how long the receiver may keep them
 */
export function sendCompressed(folder: string, cacheControl: string): RequestHandler {
  const kept = new Map<string, { changedMs: number; bytes: Buffer }>();
  const compressed = async (name: string): Promise<Buffer | null> => {
    const file = join(folder, name);
    const found = await stat(file).catch(() => null);
    if (!found?.isFile()) return null;
    const known = kept.get(name);
    if (known?.changedMs === found.mtimeMs) return known.bytes;
    const bytes = await compress(await readFile(file), { level: 9 });
    kept.set(name, { changedMs: found.mtimeMs, bytes });
    return bytes;
  };
  return async (request, response, next) => {
    const name = basename(request.path);
    const isAsked =
      (request.method === 'GET' || request.method === 'HEAD') &&
      // Only what lies in the folder itself: a path that climbs is not this one's name.
      request.path === `/${name}` &&
      texts.has(extname(name));
    if (!isAsked) {
      next();
      return;
    }
    response.vary('Accept-Encoding');
    const bytes = request.acceptsEncodings('gzip') === 'gzip' ? await compressed(name) : null;
    if (bytes === null) {
      next();
      return;
    }
    response
      .type(extname(name))
      .set({ 'Content-Encoding': 'gzip', 'Cache-Control': cacheControl })
      .send(bytes);
  };
}
