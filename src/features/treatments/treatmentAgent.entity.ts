import { Check, Entity } from 'typeorm';
import { CountColumn, ReferenceColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { AgentKind } from './agentKind.js';

/** One agent of a treatment, with its dilution. */
@Entity({ name: 'treatment_agent' })
@Check('treatment_agent_dilution', '(agent_parts IS NULL) = (water_parts IS NULL)')
export class TreatmentAgentEntity extends KeptRow {
  @ReferenceColumn('treatment')
  treatmentId!: string;

  @CountColumn()
  ordinal!: number;

  @WordColumn({ length: 30 })
  kind!: AgentKind;

  /** What it is exactly: concentration, what the label says it holds. */
  @WordColumn({ nullable: true })
  name!: string | null;

  /** Exact decimals, parts by volume: 1 part of agent to 9 of water. Both null: undiluted. */
  @TextColumn({ nullable: true })
  agentParts!: string | null;

  @TextColumn({ nullable: true })
  waterParts!: string | null;
}
