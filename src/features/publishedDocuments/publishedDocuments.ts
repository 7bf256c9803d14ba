import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse, type DocumentNode } from 'graphql';
import { packageFolder } from '../packageFolder.js';

/** A document that other programs may run by its name or digest, and only as it stands. */
export interface PublishedDocument {
  /** Its file without the ending: a “custom document identifier”. */
  name: string;
  /** “SHA256 hex document identifier”: `sha256:` and the digest of the text. */
  documentId: string;
  /** What it is for: the comment at its head. */
  description: string;
  text: string;
  document: DocumentNode;
}

const folder = packageFolder(join('schema', 'operations', 'published'));

/** Every published document by name, read once when the program starts. */
export const publishedDocuments: readonly PublishedDocument[] = readdirSync(folder)
  .filter((file) => file.endsWith('.graphql'))
  .sort()
  .map((file) => publishedDocument(file.replace('.graphql', ''), textOf(file)));

/** By either kind of identifier. */
export const documentCalled = (identifier: string): PublishedDocument | undefined =>
  publishedDocuments.find(
    ({ name, documentId }) => name === identifier || documentId === identifier,
  );

/** A checkout may turn line ends; the digest is of the text with line feeds. */
function textOf(file: string): string {
  return readFileSync(join(folder, file), 'utf8').replaceAll('\r\n', '\n');
}

function publishedDocument(name: string, text: string): PublishedDocument {
  return {
    name,
    documentId: documentIdOf(text),
    description: (/^(?:#.*\n)+/.exec(text)?.[0] ?? '').replaceAll(/^# ?/gm, '').trim(),
    text,
    document: parse(text),
  };
}

/** Appendix A, “Persisted Documents”, of GraphQL over HTTP. */
export function documentIdOf(text: string): string {
  return `sha256:${createHash('sha256').update(text, 'utf8').digest('hex')}`;
}
