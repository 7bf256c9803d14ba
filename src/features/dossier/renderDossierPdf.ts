import PDFDocument from 'pdfkit';
import type { DossierDocument, DossierSection } from './dossierDocument.js';
import type { DossierPaper } from './dossierReader.js';
import { footerRoom, margin, plain, strong } from './pdfPage.js';
import { writePdfTable } from './writePdfTable.js';

type Pdf = InstanceType<typeof PDFDocument>;
type Structure = PDFKit.PDFStructureElement;
/** The types of the library leave this out. */
interface WithImages {
  openImage(bytes: Buffer): { width: number; height: number };
}

const pictureHeight = 200;
const captionRoom = 36;
const gutter = 14;

/** A dossier as tagged PDF with its fonts in it. Lengths are in points, 1/72 inch. */
export async function renderDossierPdf(
  document: DossierDocument,
  paper: DossierPaper,
): Promise<Buffer> {
  const pdf = new PDFDocument({
    size: paper,
    margins: { top: margin, left: margin, right: margin, bottom: margin + footerRoom },
    tagged: true,
    displayTitle: true,
    lang: 'en',
    pdfVersion: '1.7',
    bufferPages: true,
    font: plain,
    info: {
      Title: document.title,
      Producer: 'Reglow',
      Creator: 'Reglow',
      // All that the day of making changes: the same records make the same bytes.
      CreationDate: new Date(`${document.statedOn}T00:00:00Z`),
    },
  });
  const pieces: Buffer[] = [];
  const whole = new Promise<Buffer>((resolve, reject) => {
    pdf.on('data', (piece: Buffer) => pieces.push(piece));
    pdf.on('end', () => {
      resolve(Buffer.concat(pieces));
    });
    pdf.on('error', reject);
  });
  const root = pdf.struct('Document');
  pdf.addStructure(root);
  tagged(pdf, root, 'H1', () => pdf.font(strong).fontSize(17).text(document.title));
  tagged(pdf, root, 'P', () => pdf.font(plain).fontSize(10).text(document.subtitle));
  for (const section of document.sections) writeSection(pdf, root, section);
  root.end();
  numberPages(pdf, document.title);
  pdf.end();
  return whole;
}

function tagged(pdf: Pdf, parent: Structure, kind: string, write: () => void): void {
  parent.add(pdf.struct(kind, {}, write));
}

function writeSection(pdf: Pdf, root: Structure, section: DossierSection): void {
  const parent = pdf.struct('Sect');
  root.add(parent);
  // A heading stays with what follows it.
  if (pdf.y > pdf.page.height - margin - footerRoom - 80) pdf.addPage();
  pdf.x = margin;
  pdf.moveDown(1);
  tagged(pdf, parent, 'H2', () => pdf.font(strong).fontSize(12.5).text(section.heading, margin));
  pdf.font(plain).fontSize(9.5).moveDown(0.3);
  for (const remark of section.remarks) {
    tagged(pdf, parent, 'P', () => pdf.font(plain).fontSize(9.5).text(remark, margin));
    pdf.moveDown(0.25);
  }
  pdf.moveDown(0.3);
  if (section.facts.length > 0) writePdfTable(pdf, parent, { columns: null, rows: section.facts });
  if (section.table) {
    if (section.facts.length > 0) pdf.moveDown(0.6);
    writePdfTable(pdf, parent, section.table);
  }
  writePictures(pdf, parent, section);
  parent.end();
}

/** Two or three side by side, each with its caption below. */
function writePictures(pdf: Pdf, parent: Structure, section: DossierSection): void {
  const { pictures, picturesAcross: across } = section;
  const width = (pdf.page.width - 2 * margin - (across - 1) * gutter) / across;
  for (let first = 0; first < pictures.length; first += across) {
    const row = pictures.slice(first, first + across).map((picture) => {
      const opened = (pdf as unknown as WithImages).openImage(picture.jpeg);
      const scale = Math.min(width / opened.width, pictureHeight / opened.height);
      return { ...picture, width: opened.width * scale, height: opened.height * scale };
    });
    const height = Math.max(...row.map((picture) => picture.height));
    if (pdf.y + height + captionRoom > pdf.page.height - margin - footerRoom) pdf.addPage();
    const top = pdf.y;
    const ends = row.map(({ jpeg, caption, width: drawn, height: tall }, index) => {
      const x = margin + index * (width + gutter);
      parent.add(
        pdf.struct('Figure', { alt: caption }, () => {
          pdf.image(jpeg, x, top, { width: drawn, height: tall });
        }),
      );
      tagged(pdf, parent, 'Caption', () =>
        pdf
          .font(plain)
          .fontSize(8.5)
          .text(caption, x, top + height + 4, { width }),
      );
      return pdf.y;
    });
    pdf.x = margin;
    pdf.y = Math.max(...ends) + 8;
  }
}

/** Title and number at the foot of each page; no part of what is read out. */
function numberPages(pdf: Pdf, title: string): void {
  const { start, count } = pdf.bufferedPageRange();
  for (let index = 0; index < count; index++) {
    pdf.switchToPage(start + index);
    const { margins, height, width } = pdf.page;
    margins.bottom = 0;
    pdf.markContent('Artifact', { type: 'Pagination' });
    pdf.font(plain).fontSize(7.5);
    const text = `${title} — page ${index + 1} of ${count}`;
    pdf.text(text, margin, height - margin, { width: width - 2 * margin, lineBreak: false });
    pdf.endMarkedContent();
  }
}
