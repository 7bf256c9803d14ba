import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface ReadPdf {
  text: string;
  /** In points, 1/72 inch, of the first page. */
  size: [width: number, height: number];
  pageCount: number;
  /** Kinds of the elements by which a screen reader finds its way, in order of the first page. */
  structure: string[];
  title: string;
}

/** A PDF as an independent reader sees it. */
export async function readPdf(bytes: Buffer): Promise<ReadPdf> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0, useSystemFonts: false });
  const pdf = await task.promise;
  const texts: string[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const { items } = await (await pdf.getPage(number)).getTextContent();
    texts.push(items.map((item) => ('str' in item ? item.str : '')).join(' '));
  }
  const first = await pdf.getPage(1);
  const { width, height } = first.getViewport({ scale: 1 });
  const { info } = await pdf.getMetadata();
  const found: ReadPdf = {
    text: texts.join(' ').replaceAll(/\s+/g, ' '),
    size: [width, height],
    pageCount: pdf.numPages,
    structure: kindsIn(await first.getStructTree()),
    title: String((info as { Title?: unknown }).Title),
  };
  await task.destroy();
  return found;
}

function kindsIn(node: unknown): string[] {
  const { role, children = [] } = (node ?? {}) as { role?: string; children?: unknown[] };
  return [...(role === undefined ? [] : [role]), ...children.flatMap(kindsIn)];
}
