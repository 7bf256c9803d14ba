import type { Database } from '../../db/database.js';
import type { AttachmentStore } from '../attachments/attachmentStore.js';
import type { DossierChoice } from './dossierDocument.js';
import { dossierOf } from './dossierOf.js';
import type { DossierFormat, DossierPaper } from './dossierReader.js';
import { renderDossierHtml } from './renderDossierHtml.js';
import { renderDossierPdf } from './renderDossierPdf.js';

export interface DossierForm {
  format: DossierFormat;
  paper: DossierPaper;
}

/** The bytes that the reader gets, and that the owner looks at before. @returns null: no such item */
export async function writeDossier(
  database: Database,
  store: AttachmentStore | null,
  itemId: string,
  choice: DossierChoice,
  { format, paper }: DossierForm,
): Promise<Buffer | null> {
  const document = await dossierOf(database, store, itemId, choice);
  if (document === null) return null;
  return format === 'PDF'
    ? renderDossierPdf(document, paper)
    : Buffer.from(renderDossierHtml(document));
}
