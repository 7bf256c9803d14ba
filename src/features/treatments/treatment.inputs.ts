import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { Zone } from '../inspections/zone.js';
import { AgentKind } from './agentKind.js';
import { SurfaceMaterial } from './surfaceMaterial.js';
import { TreatmentOutcome } from './treatmentOutcome.js';

@InputType({ description: 'Parts by volume: 1 part of agent to 9 of water, not 1 in 9.' })
export class DilutionInput {
  @Field(() => DecimalScalar, { description: 'Parts of agent, above zero.' })
  agentParts!: string;

  @Field(() => DecimalScalar, { description: 'Parts of water, zero or more.' })
  waterParts!: string;
}

@InputType({ description: 'One agent of a treatment.' })
export class TreatmentAgentInput {
  @Field(() => AgentKind, { description: 'Its kind, which says what it must not meet.' })
  kind!: AgentKind;

  @Field(() => String, { nullable: true, description: 'What exactly: "phosphoric acid, 10 %".' })
  name?: string | null;

  @Field(() => DilutionInput, { nullable: true, description: 'Left out: used as it is.' })
  dilution?: DilutionInput | null;
}

@InputType({
  description: 'Agents that must not meet were used all the same: who says so, and why.',
})
export class TreatmentOverrideInput {
  @Field(() => ID, { description: 'The party who answers for it.' })
  byId!: string;

  @Field(() => String, { description: 'Why.' })
  reason!: string;
}

@InputType({ description: 'A cleaning or finishing step on one surface.' })
export class RecordTreatmentInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => ID, { nullable: true, description: 'The component that was treated.' })
  componentId?: string | null;

  @Field(() => ID, { nullable: true, description: 'The task that it belongs to.' })
  taskId?: string | null;

  @Field(() => ID, { nullable: true, description: 'The finding that it is to put right.' })
  findingId?: string | null;

  @Field(() => Zone, { nullable: true, description: 'The part of the item.' })
  zone?: Zone | null;

  @Field(() => String, { description: 'The surface in words: "front panel", "dial window".' })
  surface!: string;

  @Field(() => SurfaceMaterial, { description: 'What it is of.' })
  material!: SurfaceMaterial;

  @Field(() => [TreatmentAgentInput], { description: 'What was used, from 1 to 10.' })
  agents!: TreatmentAgentInput[];

  @Field(() => Int, { nullable: true, description: 'How long it was left on, minutes.' })
  dwellMinutes?: number | null;

  @Field(() => Int, { defaultValue: 1, description: 'How often it was done, from 1 to 1000.' })
  passes!: number;

  @Field(() => Boolean, { description: 'It was rinsed off at the end.' })
  isRinsed!: boolean;

  @Field(() => TreatmentOutcome, { defaultValue: 'UNDECIDED', description: 'How it came out.' })
  outcome!: TreatmentOutcome;

  @Field(() => String, { nullable: true, description: 'What was seen.' })
  result?: string | null;

  @Field(() => String, { nullable: true, description: 'What remains to be done, or to be seen.' })
  remains?: string | null;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; now if left out.' })
  treatedAt?: Date | null;

  @Field(() => ID, { nullable: true, description: 'The party who did it.' })
  treatedById?: string | null;

  @Field(() => TreatmentOverrideInput, {
    nullable: true,
    description: 'Only where agents that must not meet were used together.',
  })
  override?: TreatmentOverrideInput | null;
}

@InputType({ description: 'A correction of a treatment; what is left out stays as it is.' })
export class ChangeTreatmentInput {
  @Field(() => ID, { description: 'The treatment.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => ID, { nullable: true, description: 'The component; null for none.' })
  componentId?: string | null;

  @Field(() => ID, { nullable: true, description: 'The task; null for none.' })
  taskId?: string | null;

  @Field(() => ID, { nullable: true, description: 'The finding; null for none.' })
  findingId?: string | null;

  @Field(() => Zone, { nullable: true, description: 'The part of the item; null for none.' })
  zone?: Zone | null;

  @Field(() => String, { nullable: true, description: 'The surface in words.' })
  surface?: string;

  @Field(() => SurfaceMaterial, { nullable: true, description: 'What it is of.' })
  material?: SurfaceMaterial;

  @Field(() => [TreatmentAgentInput], { nullable: true, description: 'All its agents, anew.' })
  agents?: TreatmentAgentInput[];

  @Field(() => Int, { nullable: true, description: 'How long it was left on, minutes; or null.' })
  dwellMinutes?: number | null;

  @Field(() => Int, { nullable: true, description: 'How often it was done, from 1 to 1000.' })
  passes?: number;

  @Field(() => Boolean, { nullable: true, description: 'It was rinsed off at the end.' })
  isRinsed?: boolean;

  @Field(() => TreatmentOutcome, { nullable: true, description: 'How it came out.' })
  outcome?: TreatmentOutcome;

  @Field(() => String, { nullable: true, description: 'What was seen; null for nothing.' })
  result?: string | null;

  @Field(() => String, { nullable: true, description: 'What remains; null for nothing.' })
  remains?: string | null;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When it was done.' })
  treatedAt?: Date;

  @Field(() => ID, { nullable: true, description: 'The party who did it; null for unknown.' })
  treatedById?: string | null;

  @Field(() => TreatmentOverrideInput, {
    nullable: true,
    description: 'Needed anew where new agents must not meet; dropped where they may.',
  })
  override?: TreatmentOverrideInput | null;
}

@InputType({ description: 'Which treatments; what is left out does not narrow.' })
export class TreatmentFilter {
  @Field(() => String, { nullable: true, description: 'The surface holds this text.' })
  surface?: string | null;

  @Field(() => SurfaceMaterial, { nullable: true, description: 'Of this material.' })
  material?: SurfaceMaterial | null;

  @Field(() => AgentKind, { nullable: true, description: 'With this kind of agent.' })
  agent?: AgentKind | null;

  @Field(() => TreatmentOutcome, { nullable: true, description: 'That came out so.' })
  outcome?: TreatmentOutcome | null;
}
