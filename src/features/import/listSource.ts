import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { Readable } from 'node:stream';

/** A list that can be read from its beginning as often as needed. */
export interface ListSource {
  byteLength: number;
  bytes(): AsyncIterable<Uint8Array>;
}

export const listInText = (text: string): ListSource => {
  const bytes = Buffer.from(text, 'utf8');
  return { byteLength: bytes.length, bytes: () => Readable.from([bytes]) };
};

/** @throws Error of the file system when there is no such file. */
export async function listInFile(path: string): Promise<ListSource> {
  const { size } = await stat(path);
  return {
    byteLength: size,
    bytes: () => createReadStream(path) as AsyncIterable<Uint8Array>,
  };
}
