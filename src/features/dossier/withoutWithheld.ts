import type { DossierSection } from './dossierDocument.js';
import type { Hiding } from './hidingOf.js';

/** A section with what is withheld taken out of every text of it. */
export const withoutWithheld = (section: DossierSection, hiding: Hiding): DossierSection => ({
  ...section,
  remarks: section.remarks.map(hiding),
  facts: section.facts.map(([name, value]) => [name, hiding(value)]),
  table: section.table && {
    ...section.table,
    rows: section.table.rows.map((cells) => cells.map(hiding)),
  },
  pictures: section.pictures.map((picture) => ({ ...picture, caption: hiding(picture.caption) })),
});
