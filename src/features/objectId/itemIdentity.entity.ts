import { Entity, ForeignKey, Index } from 'typeorm';
import { JsonColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { ObjectIdCategory } from '../../domain/provenance/objectIdCategory.js';

/** What a person wrote to tell this item from every other; one row an item at most. */
@Entity({ name: 'item_identity' })
export class ItemIdentityEntity extends KeptRow {
  @ForeignKey('item')
  @Index({ unique: true })
  @WordColumn({ length: 36 })
  itemId!: string;

  @TextColumn({ nullable: true })
  objectType!: string | null;

  @TextColumn({ nullable: true })
  materials!: string | null;

  /** With units: "430 × 250 × 300 mm, 18 kg". */
  @TextColumn({ nullable: true })
  measurements!: string | null;

  @TextColumn({ nullable: true })
  inscriptions!: string | null;

  @TextColumn({ nullable: true })
  distinguishingFeatures!: string | null;

  @TextColumn({ nullable: true })
  title!: string | null;

  @TextColumn({ nullable: true })
  subject!: string | null;

  @TextColumn({ nullable: true })
  maker!: string | null;

  @TextColumn({ nullable: true })
  placeOfOrigin!: string | null;

  @TextColumn({ nullable: true })
  relatedPapers!: string | null;

  @TextColumn({ nullable: true })
  description!: string | null;

  /** Categories that cannot apply to it, as the person said. */
  @JsonColumn()
  notApplicable!: ObjectIdCategory[];
}
