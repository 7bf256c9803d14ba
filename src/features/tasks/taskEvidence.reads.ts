import { one } from '../../api/kit/relations.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';

/** The evidence of each task, out of its own row. */
export const evidence: Relation = (_context, tasks) => {
  const values = tasks.map((task): Row | null => {
    const kind = task['percentEvidenceKind'];
    if (typeof kind !== 'string') return null;
    return {
      id: task.id,
      kind,
      note: task['percentEvidence'],
      readingId: task['percentEvidenceReadingId'],
      attachmentId: task['percentEvidenceAttachmentId'],
    };
  });
  const children = values.filter((value) => value !== null);
  return Promise.resolve({ values, children, childType: 'TaskEvidence' });
};

/** Evidence is read with its task or not at all. */
export const taskEvidenceReads: TypeReads = {
  typeName: 'TaskEvidence',
  byIds: () => Promise.resolve([]),
  relations: {
    reading: one('Reading', 'readingId'),
    photograph: one('Attachment', 'attachmentId'),
  },
};
