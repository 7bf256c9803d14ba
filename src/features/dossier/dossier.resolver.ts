import { createHash } from 'node:crypto';
import { Args, Ctx, FieldResolver, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { AttachmentStore } from '../attachments/attachmentStore.js';
import { Item } from '../items/item.type.js';
import { ItemLoss } from '../outOfHand/outOfHand.type.js';
import { DossierArgs, DossierFile, DossierFormArgs } from './dossier.type.js';
import { dossierPath, type DossierAsked } from './dossierAsked.js';
import { usuallyWithheld, type DossierWithheld } from './dossierReader.js';
import { writeDossier } from './writeDossier.js';

/** Drawing pages and pictures takes as long as thousands of plain values: a few at once at most. */
const priceOfDossier = 20_000;

@Resolver(() => Item)
export class DossierOfItemResolver {
  @FieldResolver(() => DossierFile, {
    description: 'All that is known of it, written down for one reader.',
    complexity: priceOfDossier,
  })
  dossier(
    @Root() item: { id: string },
    @Args() args: DossierArgs,
    @Ctx() context: ApiContext,
  ): Promise<DossierFile> {
    const { reader, extent, withhold } = args;
    const withheld = new Set(withhold ?? usuallyWithheld[reader]);
    return fileOf(context, item.id, asked(context, args, { reader, extent, withheld }));
  }
}

@Resolver(() => ItemLoss)
export class TheftReportResolver {
  @FieldResolver(() => DossierFile, {
    description:
      'The report for the police, customs and the insurer: the loss, the Object ID sheet and the ' +
      'photographs. Nothing is withheld from it.',
    complexity: priceOfDossier,
  })
  report(
    @Root() loss: { itemId: string },
    @Args() args: DossierFormArgs,
    @Ctx() context: ApiContext,
  ): Promise<DossierFile> {
    const choice = {
      reader: 'INSURER',
      extent: 'SHEET',
      withheld: new Set<DossierWithheld>(),
    } as const;
    return fileOf(context, loss.itemId, asked(context, args, choice));
  }
}

const asked = (
  { nowMs }: ApiContext,
  { format, paper, statedOn }: DossierFormArgs,
  choice: Omit<DossierAsked['choice'], 'statedOn'>,
): DossierAsked => ({
  choice: { ...choice, statedOn: statedOn ?? new Date(nowMs).toISOString().slice(0, 10) },
  form: { format, paper },
});

async function fileOf(
  { database, attachmentsFolder }: ApiContext,
  itemId: string,
  what: DossierAsked,
): Promise<DossierFile> {
  const store = attachmentsFolder === null ? null : new AttachmentStore(attachmentsFolder);
  const bytes = await writeDossier(database, store, itemId, what.choice, what.form);
  const [item] = await database.reader.rows<{ inventoryNumber: string }>(
    'SELECT inventory_number AS "inventoryNumber" FROM item WHERE id = ?',
    [itemId],
  );
  if (bytes === null || !item) throw new Error(`item ${itemId} was read and is not there`);
  const { format } = what.form;
  return {
    fileName: `dossier-${item.inventoryNumber}.${format.toLowerCase()}`,
    mediaType: format === 'PDF' ? 'application/pdf' : 'text/html; charset=utf-8',
    byteCount: bytes.length,
    digest: createHash('sha256').update(bytes).digest('hex'),
    contentBase64: bytes.toString('base64'),
    path: dossierPath(item.inventoryNumber, what),
    withheld: [...what.choice.withheld].sort(),
  };
}
