import type { ReceivedFile } from './attachmentStore.js';
import { lookAtPicture, type PictureFacts } from './lookAtPicture.js';
import { sniffMediaType } from './sniffMediaType.js';

export interface DescribedFile extends PictureFacts {
  digest: string;
  byteLength: number;
  mediaType: string;
  originalName: string;
}

const longestName = 200;

/** What is written down of a received file. @throws Refusal when it is a picture out of bounds */
export async function describeFile(file: ReceivedFile, name: string): Promise<DescribedFile> {
  const mediaType = await sniffMediaType(file.path);
  const facts = await lookAtPicture(file.path, mediaType);
  const { digest, byteLength } = file;
  return { digest, byteLength, mediaType, originalName: plainName(name), ...facts };
}

/** The last part of a path, without what a header or a terminal would take for a command. */
function plainName(name: string): string {
  const last = name.split(/[/\\]/).at(-1) ?? '';

  const plain = last.replace(/[\u0000-\u001F\u007F"]/g, '').trim();
  return Array.from(plain).slice(-longestName).join('') || 'unnamed';
}
