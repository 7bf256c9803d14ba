import sharp from 'sharp';
import { Refusal } from '../../db/refusal.js';
import { takenAtOf } from './takenAtOf.js';

/** 120 megapixels: more than any camera a collector uses; a forged picture may claim far more. */
export const mostPixels = 120_000_000;

export interface PictureFacts {
  widthPixels: number | null;
  heightPixels: number | null;
  takenAt: string | null;
}

const none: PictureFacts = { widthPixels: null, heightPixels: null, takenAt: null };

/** Types that can be shown small; what else there is (a raw file, a scan in PDF) is kept as it is. */
export const isPicture = (mediaType: string): boolean =>
  ['image/jpeg', 'image/png', 'image/webp', 'image/gif', 'image/tiff', 'image/avif'].includes(
    mediaType,
  );

/**
 * Size and time of a picture, read from its head without decoding it.
 * @throws Refusal when it claims more pixels than are taken, or cannot be read
 */
export async function lookAtPicture(path: string, mediaType: string): Promise<PictureFacts> {
  if (!isPicture(mediaType)) return none;
  const head = await sharp(path, { limitInputPixels: false })
    .metadata()
    .catch(() => {
      throw Refusal.invalid(
        'This picture is damaged: it cannot be read. Copy it from the camera once more.',
        ['file'],
      );
    });
  if (head.width * head.height * (head.pages ?? 1) > mostPixels) {
    throw Refusal.invalid(
      `This picture has ${head.width} × ${head.height} pixels; ${mostPixels / 1e6} million is the most that is taken. Make it smaller.`,
      ['file'],
    );
  }
  return {
    widthPixels: head.autoOrient.width,
    heightPixels: head.autoOrient.height,
    takenAt: await takenAtOf(path),
  };
}
