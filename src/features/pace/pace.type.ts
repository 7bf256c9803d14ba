import { GraphQLDateTimeISO, GraphQLLocalDate } from 'graphql-scalars';
import { Field, Float, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { Node } from '../../api/kit/node.type.js';

@ObjectType({
  implements: Node,
  description: 'Days on which a person is not at the bench, both ends included.',
  simpleResolvers: true,
})
export class Away extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => GraphQLLocalDate, { description: 'The first day away.' })
  fromOn!: string;

  @Field(() => GraphQLLocalDate, { description: 'The last day away.' })
  untilOn!: string;

  @Field(() => Boolean, { description: 'Every year from then on, at the same days.' })
  isYearly!: boolean;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it was taken back; null while it holds.',
  })
  withdrawnAt!: string | null;
}

@ObjectType({ description: 'One week of a person’s own.', simpleResolvers: true })
export class KeptWeek {
  @Field(() => GraphQLLocalDate, { description: 'Its Monday.' })
  mondayOn!: string;

  @Field(() => Float, { description: 'Hours at the bench, each minute counted once.' })
  hours!: number;

  @Field(() => Int, { description: 'Days of it that were declared away.' })
  awayDays!: number;
}

@ObjectType({
  description: 'Hours a week as a person really kept them, idle weeks among them.',
  simpleResolvers: true,
})
export class Pace {
  @Field(() => Float, {
    nullable: true,
    description: 'Mean hours a week; null while there is no whole week to tell of.',
  })
  meanHoursPerWeek!: number | null;

  @Field(() => Float, { nullable: true, description: 'The middle week, in hours; null likewise.' })
  medianHoursPerWeek!: number | null;

  @Field(() => Int, { description: 'Weeks without any work, of those that count.' })
  idleWeeks!: number;

  @Field(() => Int, { description: 'Weeks left out because the person was declared away.' })
  awayWeeks!: number;

  @Field(() => [KeptWeek], {
    description: 'The weeks that count, oldest first: 104 of them at the most.',
  })
  weeks!: KeptWeek[];

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
