import { globalId } from '../../api/kit/globalId.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { createAccessory } from '../items/createAccessory.js';
import { createRig } from '../items/createRig.js';
import type { DemoClock } from './demoClock.js';
import type { DemoFile } from './demoFiles.js';
import type { DemoNames } from './demoNames.js';
import type { Happening } from './happening.js';
import { instantIn } from './instantIn.js';

/** The items that a file writes down, each at its instant. */
export function itemsOfFile(file: DemoFile, clock: DemoClock, names: DemoNames): Happening[] {
  return Object.entries(file.items).map(([inventoryNumber, item]) => {
    const where = `${file.path}, ${inventoryNumber}`;
    const play = async (work: UnitOfWork) => {
      const input = {
        inventoryNumber,
        name: item.name ?? null,
        modelId: names.optionalId('model', item.model),
        serialNumber: item.serialNumber ?? null,
        madeEdtf: item.made ?? null,
        placeId: names.id('place', item.place),
        note: item.note ?? null,
      };
      if (item.kind === 'RIG') {
        names.keep('item', inventoryNumber, globalId('Rig', await createRig(work, input)));
        return;
      }
      if (!item.role) throw new Error('An accessory needs a role.');
      const id = await createAccessory(work, { ...input, role: item.role });
      names.keep('item', inventoryNumber, globalId('Accessory', id));
    };
    const action = item.kind === 'RIG' ? 'createRig' : 'createAccessory';
    return { at: instantIn(clock, where, item.at), action, where, play };
  });
}
