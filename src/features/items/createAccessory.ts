import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { CreateAccessoryInput } from './accessory.inputs.js';
import { createItem } from './createItem.js';

export const createAccessory = (work: UnitOfWork, input: CreateAccessoryInput): Promise<string> =>
  createItem(work, input, input.role);
