import jsonld, { type JsonLdDocument } from 'jsonld';
import { Parser, Writer } from 'n3';
import { provPrefixes, type ProvDocument } from './provDocument.js';
import { provJsonLd } from './provJsonLd.js';

/** The same document as Turtle. Nothing is fetched: the context is in the document. */
export async function provTurtle(document: ProvDocument): Promise<string> {
  const quads = await jsonld.toRDF(provJsonLd(document) as JsonLdDocument, {
    format: 'application/n-quads',
  });
  const writer = new Writer({ prefixes: { ...provPrefixes } });
  writer.addQuads(new Parser({ format: 'N-Quads' }).parse(quads as unknown as string));
  return new Promise((resolve, reject) => {
    writer.end((error: Error | null, text: string) => {
      if (error) reject(error);
      else resolve(text);
    });
  });
}
