import { relative } from 'node:path';
import express, { type Request, type Response, type Router } from 'express';
import { Refusal } from '../db/refusal.js';
import { attachFile } from '../features/attachments/attachFile.js';
import type { AttachmentStore } from '../features/attachments/attachmentStore.js';
import { derivedPicture, pictureSizes } from '../features/attachments/derivedPicture.js';
import type { PictureSize } from '../features/attachments/derivedPicture.js';
import { isPicture } from '../features/attachments/lookAtPicture.js';
import { takeInFile } from '../features/attachments/takeInFile.js';
import type { ApiContext } from './kit/apiContext.js';
import { actOf } from './kit/carryOut.js';
import { globalId } from './kit/globalId.js';
import { readUpload } from './readUpload.js';
import { refuseSimpleRequests } from './refuseSimpleRequests.js';

/**
 * Photographs and papers over plain HTTP: `POST /attachments` takes the bytes as they are,
 * `GET /attachments/<digest>` hands them out, `GET /attachments/<digest>/picture` a smaller copy.
 */
export function serveAttachments(
  store: AttachmentStore,
  contextOf: (request: Request) => Promise<ApiContext>,
): Router {
  const router = express.Router();
  router.post('/', refuseSimpleRequests, async (request, response) => {
    try {
      const { name, link } = readUpload(request.query);
      const context = await contextOf(request);
      const { file, fileId, result } = await takeInFile(
        context.database,
        store,
        actOf(context, 'attachFile'),
        { bytes: request, name },
        (work, id) =>
          link === null
            ? Promise.resolve(null)
            : attachFile(work, { ...link, fileId: globalId('StoredFile', id) }, context.reads),
      );
      response.status(201).json({
        file: { id: globalId('StoredFile', fileId), path: `/attachments/${file.digest}`, ...file },
        attachment: result === null ? null : { id: globalId('Attachment', result) },
        problems: [],
      });
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      // What is left of the bytes is not read to its end.
      response.status(400).set('Connection', 'close');
      response.json({ file: null, attachment: null, problems: error.problems });
    }
  });
  router.get('/:digest', async (request, response) => {
    const file = await fileOf(await contextOf(request), request);
    if (!file) return notThere(response);
    // Only what a browser draws without running anything in it is shown in place.
    if (isPicture(file.mediaType)) response.set('Content-Disposition', 'inline');
    else response.attachment(file.originalName);
    const charset = file.mediaType === 'text/plain' ? '; charset=utf-8' : '';
    response.set('Content-Type', `${file.mediaType}${charset}`);
    sendFrom(store, response, store.pathOf(file.digest), file.digest);
  });
  router.get('/:digest/picture', async (request, response) => {
    const file = await fileOf(await contextOf(request), request);
    const size = sizeOf(request.query['size']);
    if (!file || !isPicture(file.mediaType) || size === null) return notThere(response);
    const keepsCameraData = request.query['camera'] === 'keep';
    try {
      const path = await derivedPicture(store, file.digest, size, { keepsCameraData });
      response.set('Content-Type', 'image/webp').set('Content-Disposition', 'inline');
      const tag = `${file.digest}-${size.toLowerCase()}${keepsCameraData ? '-camera' : ''}`;
      sendFrom(store, response, path, tag);
    } catch {
      notThere(response);
    }
  });
  return router;
}

async function fileOf({ database: { reader } }: ApiContext, { params }: Request) {
  const [file] = await reader.rows<{ digest: string; mediaType: string; originalName: string }>(
    `SELECT digest AS "digest", media_type AS "mediaType", original_name AS "originalName"
     FROM stored_file WHERE digest = ?`,
    [String(params['digest'])],
  );
  return file ?? null;
}

/** The content never changes under its digest, so it may be kept for ever; by this person alone. */
function sendFrom(store: AttachmentStore, response: Response, path: string, tag: string): void {
  response
    .set('ETag', `"${tag}"`)
    .set('Cache-Control', 'private, max-age=31536000, immutable')
    .set('Content-Security-Policy', "default-src 'none'; sandbox")
    .set('X-Content-Type-Options', 'nosniff');
  // From its folder: a folder further up may begin with a dot, which would be refused.
  const options = { root: store.folder, lastModified: false, cacheControl: false, etag: false };
  response.sendFile(relative(store.folder, path), options, (error?: Error) => {
    if (error && !response.headersSent) notThere(response);
  });
}

function notThere(response: Response): void {
  for (const name of ['ETag', 'Cache-Control', 'Content-Disposition']) response.removeHeader(name);
  const sentence =
    'There is no such file here. If a record names it, `reglow verify` says what is missing.\n';
  response.status(404).type('text/plain').send(sentence);
}

function sizeOf(written: unknown): PictureSize | null {
  const size = (typeof written === 'string' ? written : 'medium').toUpperCase();
  return size in pictureSizes ? (size as PictureSize) : null;
}
