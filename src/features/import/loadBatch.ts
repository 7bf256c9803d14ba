import { v7 as uuidv7 } from 'uuid';
import { insertRows } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { AcquisitionEntity } from '../acquisitions/acquisition.entity.js';
import { LotLineEntity } from '../acquisitions/lotLine.entity.js';
import { ItemEntity } from '../items/item.entity.js';
import type { ItemKind } from '../items/itemKind.js';
import { ModelEntity } from '../models/model.entity.js';
import { PartyEntity } from '../parties/party.entity.js';
import { PlaceEntity } from '../places/place.entity.js';
import type { ListNames } from './listNames.js';
import type { ResolvedItem } from './resolvedItem.js';

/** Writes some rows of a list with what they name, and lets everything follow from them. */
export async function loadBatch(
  work: UnitOfWork,
  kind: ItemKind,
  batch: readonly ResolvedItem[],
  names: ListNames,
): Promise<void> {
  await insertRows(work, ModelEntity, names.models.pending.splice(0));
  await insertRows(work, PlaceEntity, names.places.pending.splice(0));
  await insertRows(work, PartyEntity, names.parties.pending.splice(0));
  const items = await insertRows(
    work,
    ItemEntity,
    batch.map(({ draft, modelId, placeId }) => ({
      kind,
      inventoryNumber: draft.inventoryNumber,
      name: draft.name,
      modelId,
      role: draft.role,
      serialNumber: draft.serialNumber,
      madeEdtf: draft.madeEdtf,
      placeId,
      housedInId: null,
      note: draft.note,
      retiredAt: null,
      retiredReason: null,
    })),
  );
  await loadPurchases(work, batch, items);
  await work.flush();
}

/** Each purchase in a list is a lot of one thing. */
async function loadPurchases(
  work: UnitOfWork,
  batch: readonly ResolvedItem[],
  items: readonly ItemEntity[],
): Promise<void> {
  const bought = batch.flatMap(({ draft: { purchase }, sellerId }, index) => {
    const item = items[index];
    return purchase && item ? [{ purchase, sellerId, itemId: item.id, lotId: uuidv7() }] : [];
  });
  await insertRows(
    work,
    AcquisitionEntity,
    bought.map(({ purchase, sellerId, lotId }) => ({
      id: lotId,
      acquiredOn: purchase.acquiredOn,
      otherPartyId: sellerId,
      venue: purchase.venue,
      priceMinorUnits: purchase.priceMinorUnits,
      currency: purchase.currency,
      spreadMethod: 'EQUAL_SHARES',
      note: purchase.note,
    })),
  );
  await insertRows(
    work,
    LotLineEntity,
    bought.map(({ itemId, lotId }) => ({
      acquisitionId: lotId,
      ordinal: 1,
      itemId,
      sundries: null,
      statedShare: null,
      statedValueMinorUnits: null,
    })),
  );
}
