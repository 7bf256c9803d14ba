import type { ApiContext } from '../../api/kit/apiContext.js';
import { AttachmentStore } from '../attachments/attachmentStore.js';
import { renderDossierPdf } from '../dossier/renderDossierPdf.js';
import { insuranceSchedule } from './insuranceSchedule.js';
import type { ScheduleOf } from './schedule.reads.js';
import { scheduleDocument } from './scheduleDocument.js';

/** The bytes of a schedule, as CSV or as PDF with photographs. */
export async function writeSchedule(
  context: ApiContext,
  of: ScheduleOf,
  format: 'csv' | 'pdf',
): Promise<Buffer> {
  const schedule = await insuranceSchedule(context, of);
  if (format === 'csv') return Buffer.from(schedule.csv);
  const { attachmentsFolder, nowMs } = context;
  const store = attachmentsFolder === null ? null : new AttachmentStore(attachmentsFolder);
  const statedOn = new Date(nowMs).toISOString().slice(0, 10);
  return renderDossierPdf(await scheduleDocument(schedule, store, statedOn), 'A4');
}
