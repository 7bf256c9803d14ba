import { readFile } from 'node:fs/promises';
import type { Reader } from '../../db/reader.js';
import type { AttachmentStore } from '../attachments/attachmentStore.js';
import { derivedPicture } from '../attachments/derivedPicture.js';
import {
  inWords,
  section,
  withheldWord,
  type DossierChoice,
  type DossierPicture,
  type DossierSection,
} from './dossierDocument.js';
import type { DossierItem } from './dossierItem.js';

interface Paper {
  digest: string;
  originalName: string;
  mediaType: string;
  role: string;
  caption: string | null;
  takenAt: string | null;
  isPicture: number | boolean;
}

const mostPictures = 24;

/** What is attached to the item, its findings, projects' tasks, hazards, parts and its past. */
const statement = `SELECT DISTINCT stored_file.digest AS "digest",
    stored_file.original_name AS "originalName", stored_file.media_type AS "mediaType",
    attachment.role AS "role", attachment.caption AS "caption", stored_file.taken_at AS "takenAt",
    stored_file.width_pixels IS NOT NULL AS "isPicture", attachment.ordinal AS "ordinal"
  FROM attachment JOIN stored_file ON stored_file.id = attachment.file_id
  WHERE attachment.detached_at IS NULL AND (
    attachment.subject_id = ?
    OR attachment.subject_id IN (SELECT id FROM finding WHERE item_id = ?)
    OR attachment.subject_id IN (SELECT id FROM hazard WHERE item_id = ?)
    OR attachment.subject_id IN (SELECT id FROM provenance_event WHERE item_id = ?)
    OR attachment.subject_id IN (SELECT component_id FROM fitting WHERE item_id = ?)
    OR attachment.subject_id IN (SELECT task.id FROM task JOIN project
      ON project.id = task.project_id WHERE project.item_id = ?))
  ORDER BY "ordinal", "digest"`;

/** @returns the photographs, and the list of everything by digest. */
export async function papersSections(
  reader: Reader,
  store: AttachmentStore | null,
  item: DossierItem,
  { withheld }: DossierChoice,
): Promise<DossierSection[]> {
  const papers = await reader.rows<Paper>(statement, Array<string>(6).fill(item.id));
  const isShown = ({ isPicture, role }: Paper): boolean =>
    Boolean(isPicture) &&
    !withheld.has('PHOTOGRAPHS') &&
    !(role === 'DOCUMENT' && (withheld.has('PEOPLE') || withheld.has('PRICES'))) &&
    !(role === 'MARKING' && withheld.has('SERIAL_NUMBERS'));
  const pictures: DossierPicture[] = [];
  const missing: string[] = [];
  for (const paper of papers.filter(isShown).slice(0, mostPictures)) {
    const path =
      store &&
      (await derivedPicture(store, paper.digest, 'MEDIUM', { format: 'jpeg' }).catch(() => null));
    if (path === null) missing.push(paper.digest);
    else pictures.push({ jpeg: await readFile(path), caption: captionOf(paper) });
  }
  const leftOut = papers.filter((paper) => Boolean(paper.isPicture) && !isShown(paper)).length;
  // A file is often named after who sent it, where it was or what was paid.
  const hidesFileNames = withheld.size > 0;
  const shown = papers.filter(isShown);
  return [
    section('Photographs', {
      remarks: [
        pictures.length === 0 ? 'No photographs are shown.' : '',
        leftOut > 0 ? `${leftOut} withheld.` : '',
        shown.length > mostPictures
          ? `The first ${mostPictures} of ${shown.length}; the others are listed by digest.`
          : '',
        missing.length > 0 ? `${missing.length} cannot be read from where they are kept.` : '',
      ].filter(Boolean),
      pictures,
    }),
    section('Photographs and papers by digest', {
      remarks: [
        'SHA-256 of each kept file: whoever is handed a file can see that it is the one meant here.',
      ],
      table:
        papers.length === 0
          ? null
          : {
              columns: ['File', 'Shows', 'SHA-256'],
              rows: papers.map((paper) => [
                hidesFileNames ? withheldWord : paper.originalName,
                inWords(paper.role),
                paper.digest,
              ]),
            },
    }),
  ];
}

const captionOf = ({ role, caption, takenAt }: Paper): string =>
  [caption ?? inWords(role), takenAt === null ? '' : `taken ${takenAt.slice(0, 10)}`]
    .filter(Boolean)
    .join(', ');
