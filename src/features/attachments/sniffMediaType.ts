import { open } from 'node:fs/promises';
import { fileTypeFromBuffer } from 'file-type';

const bytesLookedAt = 16 * 1024;
const octets = 'application/octet-stream';

/**
 * What a file is by its bytes: the sender's word and the name's ending count for nothing. Markup
 * counts as plain text, because a browser would run what it holds.
 */
export async function sniffMediaType(path: string): Promise<string> {
  const handle = await open(path);
  try {
    const { buffer, bytesRead } = await handle.read(Buffer.alloc(bytesLookedAt), 0, bytesLookedAt);
    const start = buffer.subarray(0, bytesRead);
    const mime = (await fileTypeFromBuffer(start))?.mime;
    if (mime !== undefined && !isMarkup(mime)) return mime;
    return isText(start, bytesRead === bytesLookedAt) ? 'text/plain' : octets;
  } finally {
    await handle.close();
  }
}

const isMarkup = (mime: string): boolean => /xml|html|svg/.test(mime);

/** Valid UTF-8 without control characters; a letter may be cut where the look ends. */
function isText(bytes: Buffer, isCut: boolean): boolean {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: isCut });

    return !/[\u0000-\u0008\u000E-\u001A\u001C-\u001F]/.test(text);
  } catch {
    return false;
  }
}
