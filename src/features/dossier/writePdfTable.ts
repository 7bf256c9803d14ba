import type { DossierTable } from './dossierDocument.js';
import { margin, plain, strong } from './pdfPage.js';

type Pdf = PDFKit.PDFDocument;
type Structure = PDFKit.PDFStructureElement;

const size = 8;
const padding = { above: 2.5, beside: 4 };
const strongCell = { src: strong, size };
const lineColour = '#bbbbbb';

/** Points that a column takes; columns that are not named share the rest. */
const columnWidths: Readonly<Record<string, number>> = {
  'SHA-256': 335,
  Date: 60,
  What: 58,
  Standing: 62,
  Came: 110,
  Went: 110,
  Position: 70,
  Origin: 62,
  Fitted: 60,
  Finished: 60,
  Since: 60,
  Number: 48,
  Value: 66,
  Valued: 60,
};
const widthOfNames = 140;

interface PrintedTable extends Pick<DossierTable, 'rightAligned'> {
  /** null: names and values, the name at the head of each row. */
  columns: readonly string[] | null;
  rows: readonly (readonly string[])[];
}

/** A table that says on each page that it reaches what its columns are. */
export function writePdfTable(pdf: Pdf, parent: Structure, printed: PrintedTable): void {
  const { columns, rows, rightAligned = [] } = printed;
  const widths = widthsOf(columns, pdf.page.width - 2 * margin);
  const table = pdf.struct('Table');
  parent.add(table);
  pdf.font(plain).fontSize(size);
  const head = (columns ?? []).map((text) => ({ text, type: 'TH' as const, font: strongCell }));
  const body = rows.map((row) =>
    row.map((text, index) => ({
      text,
      ...(columns === null && index === 0 && { type: 'TH' as const, font: strongCell }),
    })),
  );
  const headHeight = columns === null ? 0 : heightOfHead(pdf, columns, widths);
  const firstPage = pageIndex(pdf);
  // The library takes the height at which a new page begins from the page before it.
  const leaveRoom = (): void => {
    pdf.page.margins.top = margin + headHeight;
  };
  leaveRoom();
  pdf.on('pageAdded', leaveRoom);
  pdf.x = margin;
  pdf.table({
    structParent: table,
    columnStyles: widths.map((width, index) => ({
      width,
      ...(rightAligned.includes(columns?.[index] ?? '') && { align: { x: 'right', y: 'top' } }),
    })),
    defaultStyle: {
      border: [0, 0, 0.5, 0],
      borderColor: lineColour,
      padding: [padding.above, padding.beside],
    },
    data: columns === null ? body : [head, ...body],
  } as never);
  pdf.off('pageAdded', leaveRoom);
  pdf.page.margins.top = margin;
  table.end();
  if (columns !== null) repeatHead(pdf, { columns, widths, headHeight, rightAligned, firstPage });
  pdf.x = margin;
}

function widthsOf(columns: readonly string[] | null, whole: number): number[] {
  if (columns === null) return [widthOfNames, whole - widthOfNames];
  const named = columns.map((name) => columnWidths[name] ?? null);
  const taken = named.reduce<number>((sum, width) => sum + (width ?? 0), 0);
  const rest = (whole - taken) / named.filter((width) => width === null).length;
  return named.map((width) => width ?? rest);
}

function heightOfHead(pdf: Pdf, columns: readonly string[], widths: readonly number[]): number {
  pdf.font(strong).fontSize(size);
  const heights = columns.map((name, index) =>
    pdf.heightOfString(name, { width: (widths[index] ?? 0) - 2 * padding.beside }),
  );
  pdf.font(plain).fontSize(size);
  return Math.max(...heights) + 2 * padding.above;
}

const pageIndex = (pdf: Pdf): number => {
  const { start, count } = pdf.bufferedPageRange();
  return start + count - 1;
};

interface Repeated {
  columns: readonly string[];
  widths: readonly number[];
  headHeight: number;
  rightAligned: readonly string[];
  firstPage: number;
}

/** Drawn once more above the rows; no part of what is read out, which knows the first head. */
function repeatHead(pdf: Pdf, repeated: Repeated): void {
  const { columns, widths, headHeight, rightAligned, firstPage } = repeated;
  const lastPage = pageIndex(pdf);
  const { y } = pdf;
  for (let page = firstPage + 1; page <= lastPage; page++) {
    pdf.switchToPage(page);
    pdf.markContent('Artifact', { type: 'Pagination' });
    pdf.font(strong).fontSize(size);
    let x = margin;
    for (const [index, name] of columns.entries()) {
      const width = widths[index] ?? 0;
      pdf.text(name, x + padding.beside, margin + padding.above, {
        width: width - 2 * padding.beside,
        align: rightAligned.includes(name) ? 'right' : 'left',
      });
      x += width;
    }
    const line = margin + headHeight;
    pdf.moveTo(margin, line).lineTo(x, line).lineWidth(0.5).stroke(lineColour);
    pdf.endMarkedContent();
  }
  pdf.font(plain).fontSize(size).fillColor('black');
  pdf.y = y;
}
