import { randomUUID } from 'node:crypto';
import { mkdir, rename, rm, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import sharp from 'sharp';
import { TurnTaker } from './turnTaker.js';
import type { AttachmentStore } from './attachmentStore.js';
import { mostPixels } from './lookAtPicture.js';

/** Longest side in pixels of each size in which a picture is handed out. */
export const pictureSizes = { SMALL: 240, MEDIUM: 800, LARGE: 2000 } as const;
export type PictureSize = keyof typeof pictureSizes;

/** A decoded picture of 12 megapixels takes tens of megabytes: no more than two at a time. */
const decoding = new TurnTaker(2);
sharp.cache(false);
sharp.concurrency(1);

/**
 * A smaller copy of a picture, upright, as WebP (or JPEG, for printing), made when first asked for. It carries nothing of
 * what the camera wrote (position, serial number, owner) unless that is asked for.
 * @returns its path
 */
export async function derivedPicture(
  store: AttachmentStore,
  digest: string,
  size: PictureSize,
  { keepsCameraData = false, format = 'webp' }: DerivedOptions = {},
): Promise<string> {
  const name = `${size.toLowerCase()}${keepsCameraData ? '-camera' : ''}.${format}`;
  const path = store.derivedPathOf(digest, name);
  if (await isThere(path)) return path;
  return decoding.take(async () => {
    if (await isThere(path)) return path;
    await mkdir(dirname(path), { recursive: true });
    const part = `${path}.${randomUUID()}`;
    const side = pictureSizes[size];
    const picture = sharp(store.pathOf(digest), { limitInputPixels: mostPixels })
      .autoOrient()
      .resize(side, side, { fit: 'inside', withoutEnlargement: true });
    if (format === 'jpeg') picture.flatten({ background: '#ffffff' }).jpeg({ quality: 82 });
    else picture.webp({ quality: 80 });
    if (keepsCameraData) picture.keepExif();
    try {
      await picture.toFile(part);
      await rename(part, path);
    } finally {
      await rm(part, { force: true });
    }
    return path;
  });
}

interface DerivedOptions {
  keepsCameraData?: boolean;
  format?: 'webp' | 'jpeg';
}

const isThere = (path: string): Promise<boolean> =>
  stat(path).then(
    () => true,
    () => false,
  );
