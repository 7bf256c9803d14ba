import type { Database } from '../../db/database.js';
import type { AttachmentStore } from '../attachments/attachmentStore.js';
import { inWords, section, type DossierChoice, type DossierDocument } from './dossierDocument.js';
import { dossierItem } from './dossierItem.js';
import { hazardSection } from './hazardSection.js';
import { identificationSection } from './identificationSection.js';
import { logSection } from './logSection.js';
import { papersSections } from './papersSection.js';
import { partsSection } from './partsSection.js';
import { pastSection } from './pastSection.js';
import { readingsSection, workSection } from './workSection.js';

/**
 * What is known of an item, as of one instant, for one reader. What is withheld is not read into
 * it, so that no way of writing it down can show it.
 * @returns null if there is no item of this number
 */
export const dossierOf = (
  database: Database,
  store: AttachmentStore,
  inventoryNumber: string,
  choice: DossierChoice,
): Promise<DossierDocument | null> =>
  database.snapshot(async (reader) => {
    const item = await dossierItem(reader, inventoryNumber);
    if (!item) return null;
    const withheld = [...choice.withheld].sort().map(inWords);
    const [photographs, papers] = await papersSections(reader, store, item, choice);
    return {
      title: [item.inventoryNumber, item.maker, item.designation, item.name]
        .filter(Boolean)
        .join(' · '),
      subtitle: `For the ${inWords(choice.reader)}, as recorded on ${choice.statedOn}`,
      statedOn: choice.statedOn,
      sections: [
        section('About this dossier', {
          remarks: [
            withheld.length === 0
              ? 'Nothing that is recorded was withheld.'
              : `Withheld by the owner: ${withheld.join(', ')}.`,
            'It says what was recorded. It is no appraisal, and no licence to switch anything on.',
          ],
        }),
        await identificationSection(reader, item, choice),
        ...(photographs ? [photographs] : []),
        await pastSection(reader, item, choice),
        await partsSection(reader, item, choice),
        await workSection(reader, item),
        await readingsSection(reader, item),
        await hazardSection(reader, item),
        ...(papers ? [papers] : []),
        await logSection(reader),
      ],
    };
  });
