import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { ComponentOrigin } from '../parts/componentOrigin.js';

@ObjectType({ description: 'The days on which something may have been.', simpleResolvers: true })
export class DateBounds {
  @Field(() => GraphQLLocalDate, { nullable: true, description: 'First day; null if open.' })
  earliest!: string | null;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'Last day; null if open.' })
  latest!: string | null;
}

@ObjectType({
  description: 'A date code on a part, with what is left of its meanings.',
  simpleResolvers: true,
})
export class DateCodeFinding {
  @Field(() => String, { description: 'The position in which the part sits or sat.' })
  designator!: string;

  @Field(() => String, { description: 'The code as printed.' })
  dateCode!: string;

  @Field(() => ComponentOrigin, {
    description: 'An original part bounds the making, a replacement the repair that put it in.',
  })
  origin!: ComponentOrigin;

  @Field(() => Int, { description: 'How many meanings the code has by itself; 0 if unreadable.' })
  readingCount!: number;

  @Field(() => [DateBounds], {
    description: 'Meanings that stand up to everything else that is known; none in a conflict.',
  })
  possible!: DateBounds[];

  @Field(() => DateBounds, {
    nullable: true,
    description: 'When a repair put the part in; null for original parts and unknown origin.',
  })
  repair!: DateBounds | null;
}

export const SerialDateState = describedEnum(
  'SerialDateState',
  'What follows from a serial number among dated ones of the model.',
  {
    DATED: 'It lies beside dated serial numbers, which bound it.',
    OUT_OF_ORDER: 'Two dated serial numbers contradict the order of numbers: nothing follows.',
    NONE: 'Too little is known.',
  },
);
export type SerialDateState = keyof typeof SerialDateState;

@ObjectType({ description: 'What the serial number says of the making.', simpleResolvers: true })
export class SerialFinding {
  @Field(() => SerialDateState, { description: 'Whether anything follows.' })
  state!: SerialDateState;

  @Field(() => String, { nullable: true, description: 'Why nothing follows; null where it does.' })
  why!: string | null;

  @Field(() => DateBounds, {
    nullable: true,
    description: 'What the neighbours allow if numbers were given in order; null if nothing.',
  })
  bracket!: DateBounds | null;

  @Field(() => DateBounds, {
    nullable: true,
    description: 'In proportion between the neighbours, widened by the spread; null without two.',
  })
  estimate!: DateBounds | null;

  @Field(() => Int, {
    nullable: true,
    description: 'How far known numbers lie from what their neighbours say, in days, at most.',
  })
  spreadDays!: number | null;

  @Field(() => [String], { description: 'Dated serial numbers that it rests on, or that clash.' })
  serialNumbers!: string[];
}

@ObjectType({ description: 'A statement that cannot be true with others.', simpleResolvers: true })
export class ConflictingStatement {
  @Field(() => String, { description: 'The statement in words.' })
  statement!: string;
}

@ObjectType({
  description: 'When the item was made, by everything that bears on it, as one network of dates.',
  simpleResolvers: true,
})
export class ItemDateFindings {
  @Field(() => DateBounds, {
    nullable: true,
    description: 'The days on which it may have been made; null where statements conflict.',
  })
  making!: DateBounds | null;

  @Field(() => [DateCodeFinding], { description: 'What the date codes on its parts say.' })
  codes!: DateCodeFinding[];

  @Field(() => SerialFinding, {
    nullable: true,
    description: 'What its serial number says; null without a serial number or a model.',
  })
  serial!: SerialFinding | null;

  @Field(() => [ConflictingStatement], {
    description: 'The fewest statements that cannot all be true; empty where all can.',
  })
  conflict!: ConflictingStatement[];

  @Field(() => Int, { description: 'How many statements were put together.' })
  statementCount!: number;
}
