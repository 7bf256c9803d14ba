import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, Float, ID, InputType, Int } from 'type-graphql';
import { MoneyInput } from '../../api/kit/money.type.js';
import { ProjectStatus } from './projectStatus.js';
import { TargetStandard } from './targetStandard.js';

@InputType({ description: 'A new restoration of an item.' })
export class OpenProjectInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => String, { description: 'What the project is called.' })
  title!: string;

  @Field(() => TargetStandard, { description: 'How far it is meant to go.' })
  targetStandard!: TargetStandard;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day on which work began; the project is then ACTIVE, else PLANNED.',
  })
  startedOn?: string | null;

  @Field(() => MoneyInput, { nullable: true, description: 'The most it may cost.' })
  ceiling?: MoneyInput | null;

  @Field(() => Float, {
    nullable: true,
    description: 'The most hours that it may take; kept in whole minutes.',
  })
  ceilingHours?: number | null;

  @Field(() => String, { nullable: true, description: 'What was decided, and why.' })
  decision?: string | null;
}

@InputType({ description: 'A change of a project; what is left out stays as it is.' })
export class ChangeProjectInput {
  @Field(() => ID, { description: 'The project.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'New title.' })
  title?: string;

  @Field(() => TargetStandard, { nullable: true, description: 'How far it is meant to go.' })
  targetStandard?: TargetStandard;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day on which work began; null if it is not known.',
  })
  startedOn?: string | null;

  @Field(() => MoneyInput, {
    nullable: true,
    description: 'The most it may cost; null for no ceiling.',
  })
  ceiling?: MoneyInput | null;

  @Field(() => Float, {
    nullable: true,
    description: 'The most hours that it may take, in whole minutes; null for no ceiling.',
  })
  ceilingHours?: number | null;

  @Field(() => String, {
    nullable: true,
    description: 'What was decided, and why; null for nothing.',
  })
  decision?: string | null;
}

@InputType({ description: 'Where a project stands from now on.' })
export class SetProjectStatusInput {
  @Field(() => ID, { description: 'The project.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => ProjectStatus, {
    description:
      'COMPLETED and ABANDONED close the project; any other opens it again. COMPLETED is refused while tasks are open.',
  })
  status!: ProjectStatus;

  @Field(() => String, {
    nullable: true,
    description: 'What was decided, and why; left out, the decision stays as it is.',
  })
  decision?: string | null;
}
