import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { FindingInput } from '../findings/finding.inputs.js';
import { PositionState } from './positionState.js';

@InputType({ description: 'One position checked off: name it by its designator or by its id.' })
export class FitOutCheckInput {
  @Field(() => String, { nullable: true, description: 'As the model has it: V1, bottom cover.' })
  designator?: string | null;

  @Field(() => ID, { nullable: true, description: 'The position.' })
  positionId?: string | null;

  @Field(() => PositionState, { description: 'What was found there.' })
  state!: PositionState;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A look over an item: everything that was seen, in one go.' })
export class RecordInspectionInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; now if left out.' })
  inspectedAt?: Date | null;

  @Field(() => ID, { nullable: true, description: 'The party who looked.' })
  inspectorId?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;

  @Field(() => [FindingInput], { nullable: true, description: 'What was seen, zone by zone.' })
  findings?: FindingInput[] | null;

  @Field(() => [FitOutCheckInput], {
    nullable: true,
    description: 'The fit-out checked off, position by position.',
  })
  fitOutChecks?: FitOutCheckInput[] | null;
}

@InputType({ description: 'A correction of an inspection; what is left out stays as it is.' })
export class ChangeInspectionInput {
  @Field(() => ID, { description: 'The inspection.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When; its checks, and the findings seen then, move along.',
  })
  inspectedAt?: Date;

  @Field(() => ID, { nullable: true, description: 'The party who looked; null for nobody named.' })
  inspectorId?: string | null;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}

@InputType({ description: 'A correction of one check; what is left out stays as it is.' })
export class ChangeFitOutCheckInput {
  @Field(() => ID, { description: 'The check.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => PositionState, { nullable: true, description: 'What was found there.' })
  state?: PositionState;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
