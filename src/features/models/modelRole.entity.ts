import { Entity, Index } from 'typeorm';
import { FlagColumn, IdColumn, ReferenceColumn, WordColumn } from '../../db/columns.js';
import type { AccessoryRole } from '../items/accessoryRole.js';

/** An accessory role that a model works with, or cannot work without. */
@Entity({ name: 'model_role' })
@Index(['modelId', 'role'], { unique: true })
export class ModelRoleEntity {
  @IdColumn()
  id!: string;

  @ReferenceColumn('model')
  modelId!: string;

  @WordColumn({ length: 20 })
  role!: AccessoryRole;

  @FlagColumn()
  isRequired!: boolean;
}
