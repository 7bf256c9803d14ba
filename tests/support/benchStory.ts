import { globalId } from '../../src/api/kit/globalId.js';
import { insertRow, insertRows } from '../../src/db/insertRow.js';
import { ItemEntity } from '../../src/features/items/item.entity.js';
import { FitOutPositionEntity } from '../../src/features/models/fitOutPosition.entity.js';
import { ModelEntity } from '../../src/features/models/model.entity.js';
import { PartyEntity } from '../../src/features/parties/party.entity.js';
import { PartTypeEntity } from '../../src/features/parts/partType.entity.js';
import { LimitEntity } from '../../src/features/readings/limit.entity.js';
import type { TestApi } from './testApi.js';

/** A set of an invented model with its fit-out, a tube type with limits, and who works on it. */
export interface BenchStory {
  rig: string;
  /** A second set of the same model. */
  otherRig: string;
  /** A set without a model. */
  unknownRig: string;
  tubeType: string;
  person: string;
  positionIds: string[];
}

const designators = ['V1', 'V2', 'V3', 'C12', 'bottom cover'];

export async function benchStory(api: TestApi): Promise<BenchStory> {
  const act = { action: 'testStory', actorId: null, now: '2026-01-01T00:00:00.000Z' };
  return api.database.write(act, async (work) => {
    const party = await insertRow(work, PartyEntity, {
      kind: 'PERSON',
      name: 'Bench hand',
      contact: null,
      note: null,
      retiredAt: null,
    });
    const model = await insertRow(work, ModelEntity, {
      itemKind: 'RIG',
      maker: 'Lark Moor',
      designation: 'L-200',
      description: null,
      firstYearMade: null,
      lastYearMade: null,
      note: null,
      retiredAt: null,
    });
    const tube = await insertRow(work, PartTypeEntity, {
      kind: 'TUBE',
      designation: '6146B',
      description: null,
      ratings: [],
      retiredAt: null,
    });
    const positions = await insertRows(
      work,
      FitOutPositionEntity,
      designators.map((designator, index) => ({
        modelId: model.id,
        designator,
        zone: 'WHOLE' as const,
        partTypeId: designator.startsWith('V') ? tube.id : null,
        isRequired: designator !== 'bottom cover',
        ordinal: index + 1,
        note: null,
      })),
    );
    await insertRows(work, LimitEntity, [
      {
        partTypeId: tube.id,
        modelId: null,
        quantity: 'transconductance',
        tier: null,
        lower: '4.2',
        upper: null,
        unit: 'mS',
        source: "the collector's own rule",
      },
      {
        partTypeId: null,
        modelId: model.id,
        quantity: 'output power',
        tier: 'IN_CIRCUIT',
        lower: '80',
        upper: '120',
        unit: 'W',
        source: 'invented handbook, page 12',
      },
    ]);
    const rig = (inventoryNumber: string, modelId: string | null) =>
      insertRow(work, ItemEntity, {
        kind: 'RIG',
        inventoryNumber,
        name: null,
        modelId,
        role: null,
        serialNumber: null,
        madeEdtf: null,
        placeId: null,
        housedInId: null,
        note: null,
        retiredAt: null,
        retiredReason: null,
      });
    return {
      rig: globalId('Rig', (await rig('R-001', model.id)).id),
      otherRig: globalId('Rig', (await rig('R-002', model.id)).id),
      unknownRig: globalId('Rig', (await rig('R-003', null)).id),
      tubeType: globalId('PartType', tube.id),
      person: globalId('Party', party.id),
      positionIds: positions.map(({ id }) => globalId('FitOutPosition', id)),
    };
  });
}
