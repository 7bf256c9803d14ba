import { Entity } from 'typeorm';
import {
  InstantColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { ItemKind } from '../items/itemKind.js';
import type { TemplateTask } from './templateTask.js';

/** A checklist of the collector's own for a kind of set or a kind of job. */
@Entity({ name: 'task_template' })
export class TaskTemplateEntity extends KeptRow {
  @WordColumn()
  title!: string;

  @TextColumn({ nullable: true })
  description!: string | null;

  /** What it suits; null for both. */
  @WordColumn({ length: 20, nullable: true })
  itemKind!: ItemKind | null;

  /** The past project that it was made from. */
  @ReferenceColumn('project', { nullable: true })
  sourceProjectId!: string | null;

  @JsonColumn()
  tasks!: TemplateTask[];

  @InstantColumn({ nullable: true })
  retiredAt!: string | null;
}
