import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { Node } from '../../api/kit/node.type.js';

export const WantUrgency = describedEnum('WantUrgency', 'How badly something is wanted.', {
  STOPS_WORK: 'An open task waits for it.',
  STOPS_A_SET: 'It belongs in a required position of a set that is not known to be filled.',
  NOTHING_WAITS: 'Nothing recorded waits for it.',
});
export type WantUrgency = keyof typeof WantUrgency;

@ObjectType({ description: 'How badly it is wanted, and why.', simpleResolvers: true })
export class WantStanding {
  @Field(() => WantUrgency, { description: 'The answer in a word.' })
  urgency!: WantUrgency;

  @Field(() => Int, { description: 'Open tasks that wait: its own, and all that come after it.' })
  openTasksWaiting!: number;

  @Field(() => Int, { description: 'How many were found so far.' })
  foundQuantity!: number;

  @Field(() => Int, { description: 'How many are still looked for.' })
  openQuantity!: number;

  @Field(() => Int, { description: 'How many are ordered and on their way.' })
  onOrderQuantity!: number;

  @Field(() => Basis, { description: 'How it came about.' })
  basis!: Basis;
}

@ObjectType({
  implements: Node,
  description: 'What is looked for, for which set or task, and up to what price.',
  simpleResolvers: true,
})
export class Want extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'What it is, in words; null if not said.' })
  description!: string | null;

  @Field(() => String, { nullable: true, description: 'The place in the set; null if none.' })
  designator!: string | null;

  @Field(() => Int, { description: 'How many were wanted from the start.' })
  quantity!: number;

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'The most to be paid for one; or null.',
  })
  ceiling!: MoneyAmount | null;

  @Field(() => WantStanding, { description: 'How badly it is wanted, and what was found.' })
  standing!: WantStanding;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it was given up; null while it is wanted.',
  })
  droppedAt!: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}

@ObjectType({
  description: 'The wanted list across all projects, in one answer that can be kept and printed.',
  simpleResolvers: true,
})
export class WantedList {
  @Field(() => GraphQLDateTimeISO, { description: 'The moment for which it holds.' })
  asOf!: string;
}

@ObjectType({
  implements: Node,
  description: 'A purchase made on the spot.',
  simpleResolvers: true,
})
export class Find extends Node {
  @Field(() => String, { description: 'The name that it was sent under.' })
  key!: string;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was first sent.' })
  recordedAt!: string;
}
