import { existsSync } from 'node:fs';
import { extname, join } from 'node:path';
import express, { type Router } from 'express';
import { sendCompressed } from './sendCompressed.js';

/**
 * The dashboard's built files. Every address at which a browser asks for a page gets the one page,
 * which finds its own way from the address; other programs that ask go on to what comes after.
 * @param folder as built, with index.html and assets/
 */
export function servePages(folder: string): Router {
  const pages = express.Router();
  // The names of these files change with their content.
  const assets = sendCompressed(join(folder, 'assets'), 'public, max-age=31536000, immutable');
  pages.use('/assets', assets);
  pages.use('/assets', express.static(join(folder, 'assets'), { immutable: true, maxAge: '365d' }));
  pages.use(express.static(folder, { index: false, cacheControl: false }));
  const page = join(folder, 'index.html');
  pages.use((request, response, next) => {
    const wantsPage =
      (request.method === 'GET' || request.method === 'HEAD') &&
      request.accepts(['text/plain', 'text/html']) === 'text/html' &&
      extname(request.path) === '';
    if (!wantsPage || !existsSync(page)) {
      next();
      return;
    }
    response.set('Cache-Control', 'no-cache').sendFile(page);
  });
  return pages;
}
