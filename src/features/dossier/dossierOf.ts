import type { Database } from '../../db/database.js';
import type { Reader } from '../../db/reader.js';
import type { AttachmentStore } from '../attachments/attachmentStore.js';
import { chainSection } from './chainSection.js';
import { claimsSection } from './claimsSection.js';
import {
  dayOf,
  inWords,
  section,
  type DossierChoice,
  type DossierDocument,
  type DossierSection,
} from './dossierDocument.js';
import { dossierItem, type DossierItem } from './dossierItem.js';
import { findingsSection } from './findingsSection.js';
import { hazardSection } from './hazardSection.js';
import { identificationSection } from './identificationSection.js';
import { logSection } from './logSection.js';
import { lossSection } from './lossSection.js';
import { papersSections } from './papersSection.js';
import { partsSection } from './partsSection.js';
import { pastSection } from './pastSection.js';
import { withheldTexts } from './withheldTexts.js';
import { withoutWithheld } from './withoutWithheld.js';
import { readingsSection, workSection } from './workSection.js';

/**
 * What is known of an item, as of one instant, for one reader. What is withheld is not read into
 * it, so that no way of writing it down can show it.
 * @returns null if there is no such item
 */
export const dossierOf = (
  database: Database,
  store: AttachmentStore | null,
  itemId: string,
  choice: DossierChoice,
): Promise<DossierDocument | null> =>
  database.snapshot(async (reader) => {
    const item = await dossierItem(reader, itemId);
    if (!item) return null;
    const isSheet = choice.extent === 'SHEET';
    const hiding = await withheldTexts(reader, item, choice);
    const sections = isSheet
      ? await sheetSections(reader, store, item, choice)
      : await allSections(reader, store, item, choice);
    const name = [item.inventoryNumber, item.maker, item.designation, item.name];
    const kind = isSheet ? 'Object ID sheet' : `For the ${inWords(choice.reader)}`;
    return {
      title: hiding(name.filter(Boolean).join(' · ')),
      subtitle: `${kind}, as recorded on ${choice.statedOn}`,
      statedOn: choice.statedOn,
      sections: [
        aboutSection(choice),
        ...sections.map((one) => withoutWithheld(one, hiding)),
        await logSection(reader),
      ],
    };
  });

function aboutSection({ withheld, extent }: DossierChoice): DossierSection {
  const words = [...withheld].sort().map(inWords);
  return section(extent === 'SHEET' ? 'About this sheet' : 'About this dossier', {
    remarks: [
      words.length === 0
        ? 'Nothing that is recorded was withheld.'
        : `Withheld by the owner: ${words.join(', ')}.`,
      'It says what was recorded. It is no appraisal, and no licence to switch anything on.',
    ],
  });
}

async function sheetSections(
  reader: Reader,
  store: AttachmentStore | null,
  item: DossierItem,
  choice: DossierChoice,
): Promise<DossierSection[]> {
  return [
    await lossSection(reader, item, choice),
    await identificationSection(reader, item, choice),
    ...(await papersSections(reader, store, item, choice)),
  ];
}

async function allSections(
  reader: Reader,
  store: AttachmentStore | null,
  item: DossierItem,
  choice: DossierChoice,
): Promise<DossierSection[]> {
  const [photographs, papers] = await papersSections(reader, store, item, choice);
  const lastChange = await lastChangeAt(reader);
  return [
    await identificationSection(reader, item, choice),
    ...(photographs ? [photographs] : []),
    await chainSection(reader, item, choice, dayOf(lastChange)),
    await pastSection(reader, item, choice),
    await claimsSection(reader, item, choice),
    await partsSection(reader, item, choice, Date.parse(lastChange)),
    await workSection(reader, item),
    await readingsSection(reader, item),
    await findingsSection(reader, item),
    await hazardSection(reader, item),
    ...(papers ? [papers] : []),
  ];
}

/** What is computed is as of the last change of the records, so that the day of asking moves nothing. */
async function lastChangeAt(reader: Reader): Promise<string> {
  const [last] = await reader.rows<{ at: string | null }>(
    'SELECT MAX(changed_at) AS "at" FROM change',
  );
  return last?.at ?? new Date(0).toISOString();
}
