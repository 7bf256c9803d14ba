import type { ListEncoding } from './listEncoding.js';
import type { ListSource } from './listSource.js';

/**
 * By its byte order mark; else UTF-8 when every byte of the list is valid in it; else Windows-1252,
 * in which every byte means something. A text of some length in Windows-1252 with accented letters
 * is practically never valid UTF-8.
 */
export async function detectEncoding(source: ListSource): Promise<ListEncoding> {
  const utf8 = new TextDecoder('utf-8', { fatal: true });
  let start = Buffer.alloc(0);
  let isStarted = false;
  try {
    for await (const bytes of source.bytes()) {
      if (!isStarted) {
        start = Buffer.concat([start, bytes]);
        if (start.length < 2) continue;
        if (start[0] === 0xff && start[1] === 0xfe) return 'utf-16le';
        if (start[0] === 0xfe && start[1] === 0xff) return 'utf-16be';
      }
      utf8.decode(isStarted ? bytes : start, { stream: true });
      isStarted = true;
    }
    if (!isStarted) utf8.decode(start, { stream: true });
    utf8.decode();
    return 'utf-8';
  } catch (error) {
    if (error instanceof TypeError) return 'windows-1252';
    throw error;
  }
}
