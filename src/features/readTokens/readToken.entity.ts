import { Entity } from 'typeorm';
import { InstantColumn, JsonColumn, LocalDateColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { TokenAllowance } from './tokenAllowance.js';
import type { TokenScope } from './tokenScope.js';

/** What a token opens and shows, and until when. What proves it is kept apart. */
@Entity({ name: 'read_token' })
export class ReadTokenEntity extends KeptRow {
  /** For whom or what it was made: `screen in the club room`. */
  @WordColumn()
  name!: string;

  @JsonColumn()
  scopes!: TokenScope[];

  @JsonColumn()
  shows!: TokenAllowance[];

  /** The last day (UTC) on which it opens anything; null: until it is taken back. */
  @LocalDateColumn({ nullable: true })
  lastDay!: string | null;

  @InstantColumn({ nullable: true })
  takenBackAt!: string | null;
}
