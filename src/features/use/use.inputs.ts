import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Float, ID, InputType, Int } from 'type-graphql';

@InputType({ description: 'A rig was in use on the air.' })
export class RecordUseInput {
  @Field(() => ID, { description: 'The rig.' })
  rigId!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it began; if left out, so that it ends now.',
  })
  startedAt?: Date | null;

  @Field(() => Float, { description: 'Hours of use, above 0 and up to 1000.' })
  hours!: number;

  @Field(() => Int, { defaultValue: 0, description: 'Contacts made, from 0 up.' })
  contacts!: number;

  @Field(() => String, { nullable: true, description: 'Wavelength name of the band: 40m.' })
  band?: string | null;

  @Field(() => String, { nullable: true, description: 'Kind of emission in capitals: CW, SSB.' })
  mode?: string | null;

  @Field(() => [ID], {
    defaultValue: [],
    description: 'Accessories that served it then; their hours count too.',
  })
  accessoryIds!: string[];

  @Field(() => ID, { nullable: true, description: 'The party who operated it.' })
  operatorId?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A correction of a use; what is left out stays as it is.' })
export class ChangeUseInput {
  @Field(() => ID, { description: 'The use of the rig; that of its accessories follows.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When it began.' })
  startedAt?: Date;

  @Field(() => Float, { nullable: true, description: 'Hours of use; 0 for one that never was.' })
  hours?: number;

  @Field(() => Int, { nullable: true, description: 'Contacts made.' })
  contacts?: number;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}

@InputType({ description: 'Something to be done again and again, by use or by the calendar.' })
export class AddMaintenanceRuleInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => String, { description: 'What is to be done: clean the relay contacts.' })
  title!: string;

  @Field(() => Float, { nullable: true, description: 'After so many hours of use; or left out.' })
  everyUseHours?: number | null;

  @Field(() => Int, { nullable: true, description: 'After so many days; or left out.' })
  everyDays?: number | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Counts from then; now if left out.',
  })
  countsFrom?: Date | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A change of a rule; what is left out stays as it is.' })
export class ChangeMaintenanceRuleInput {
  @Field(() => ID, { description: 'The rule.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'What is to be done.' })
  title?: string;

  @Field(() => Float, {
    nullable: true,
    description: 'Hours of use; null when use does not matter.',
  })
  everyUseHours?: number | null;

  @Field(() => Int, {
    nullable: true,
    description: 'Days; null when the calendar does not matter.',
  })
  everyDays?: number | null;

  @Field(() => Boolean, { nullable: true, description: 'True: it is no longer asked for.' })
  isRetired?: boolean;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}

@InputType({ description: 'What a rule asks for has been done.' })
export class RecordMaintenanceInput {
  @Field(() => ID, { description: 'The rule.' })
  ruleId!: string;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; now if left out.' })
  doneAt?: Date | null;

  @Field(() => ID, { nullable: true, description: 'The party who did it.' })
  doneById?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A correction of what was done; what is left out stays as it is.' })
export class ChangeMaintenanceDoneInput {
  @Field(() => ID, { description: 'What was done.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When it was done.' })
  doneAt?: Date | null;

  @Field(() => ID, { nullable: true, description: 'The party who did it; null for nobody named.' })
  doneById?: string | null;

  @Field(() => Boolean, {
    nullable: true,
    description: 'True: it was written down by mistake and counts for nothing.',
  })
  isWithdrawn?: boolean | null;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
