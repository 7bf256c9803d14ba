import { GraphQLDateTimeISO } from 'graphql-scalars';
import { ArgsType, Field, ID, InputType, Int } from 'type-graphql';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { HazardKind } from '../hazards/hazardKind.js';
import { Zone } from '../inspections/zone.js';
import { FindingSeverity } from './findingSeverity.js';
import { FindingStatus } from './findingStatus.js';

@ArgsType()
export class FindingsArgs extends PageArgs {
  @Field(() => FindingStatus, { nullable: true, description: 'Only those; all if left out.' })
  status?: FindingStatus | null;
}

@InputType({ description: 'Something seen in one zone.' })
export class FindingInput {
  @Field(() => Zone, { description: 'Where.' })
  zone!: Zone;

  @Field(() => FindingSeverity, { description: 'How much it matters.' })
  severity!: FindingSeverity;

  @Field(() => String, { description: 'What was seen.' })
  note!: string;

  @Field(() => [HazardKind], {
    nullable: true,
    description: 'What about it can hurt; each is raised as a hazard of its own.',
  })
  hazards?: HazardKind[] | null;
}

@InputType({ description: 'Something seen at the bench, without an inspection.' })
export class RecordFindingInput extends FindingInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; now if left out.' })
  seenAt?: Date | null;
}

@InputType({ description: 'What becomes of a finding.' })
export class SettleFindingInput {
  @Field(() => ID, { description: 'The finding.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => FindingStatus, {
    description: 'ACCEPTED or RESOLVED; OPEN opens a settled one again.',
  })
  status!: FindingStatus;

  @Field(() => String, {
    nullable: true,
    description: 'How it was put right, or why it stays. Not needed for opening it again.',
  })
  note?: string | null;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; now if left out.' })
  settledAt?: Date | null;
}

@InputType({ description: 'A correction of a finding; what is left out stays as it is.' })
export class ChangeFindingInput {
  @Field(() => ID, { description: 'The finding.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => Zone, { nullable: true, description: 'Where.' })
  zone?: Zone;

  @Field(() => FindingSeverity, { nullable: true, description: 'How much it matters.' })
  severity?: FindingSeverity;

  @Field(() => String, { nullable: true, description: 'What was seen.' })
  note?: string;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When it was seen.' })
  seenAt?: Date;
}
