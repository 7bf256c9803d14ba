import type { ListEncoding } from './listEncoding.js';
import type { ListSource } from './listSource.js';

/**
 * The text of a list, piece by piece, without byte order mark and with every line ending as "\n"
 * (so that lines can be counted, and a note reads the same wherever it was typed).
 * @param onBytes told how many bytes each piece was
 * @throws TypeError when the bytes are not valid in the encoding
 */
export async function* decodeList(
  source: ListSource,
  encoding: ListEncoding,
  onBytes: (count: number) => void = () => undefined,
): AsyncGenerator<string> {
  const decoder = new TextDecoder(encoding, { fatal: true });
  let heldBack = '';
  for await (const bytes of source.bytes()) {
    const text = heldBack + decoder.decode(bytes, { stream: true });
    // A "\r" at the end may be the first half of "\r\n".
    heldBack = text.endsWith('\r') ? '\r' : '';
    yield oneLineEnding(heldBack === '' ? text : text.slice(0, -1));
    onBytes(bytes.length);
  }
  yield oneLineEnding(heldBack + decoder.decode());
}

const oneLineEnding = (text: string): string => text.replace(/\r\n?/g, '\n');
