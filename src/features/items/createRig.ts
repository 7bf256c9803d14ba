import type { UnitOfWork } from '../../db/unitOfWork.js';
import { createItem } from './createItem.js';
import type { CreateRigInput } from './rig.inputs.js';

export const createRig = (work: UnitOfWork, input: CreateRigInput): Promise<string> =>
  createItem(work, input, null);
