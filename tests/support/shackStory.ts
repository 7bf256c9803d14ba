import { carried } from './carried.js';
import type { TestApi } from './testApi.js';

/** Rigs that are ready but for what serves them, told in a few words. */
export interface ShackStory {
  model(designation: string, more?: object): Promise<string>;
  /** A rig of a model with a final check passed. */
  rig(inventoryNumber: string, modelId: string): Promise<string>;
  accessory(inventoryNumber: string, role: string): Promise<string>;
  serves(accessoryId: string, rigId: string, role: string, isExclusive?: boolean): Promise<void>;
}

export function shackStory(api: TestApi): ShackStory {
  return {
    model: async (designation, more = {}) =>
      (
        await carried(
          api,
          'createModel',
          { itemKind: 'RIG', maker: 'Vessnor', designation, ...more },
          'model',
        )
      ).id,
    rig: async (inventoryNumber, modelId) => {
      const { id } = await carried(api, 'createRig', { inventoryNumber, modelId }, 'rig');
      const check = { itemId: id, procedure: 'output power', isPassed: true, validDays: 365 };
      await carried(api, 'recordFinalCheck', check, 'finalCheck');
      return id;
    },
    accessory: async (inventoryNumber, role) =>
      (await carried(api, 'createAccessory', { inventoryNumber, role }, 'accessory')).id,
    serves: async (accessoryId, rigId, role, isExclusive = false) => {
      const service = { accessoryId, rigId, role, isExclusive };
      await carried(api, 'assignAccessory', service, 'service');
    },
  };
}
