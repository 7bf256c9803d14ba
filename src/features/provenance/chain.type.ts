import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, Float, Int, ObjectType } from 'type-graphql';
import { describedEnum } from '../../api/kit/describedEnum.js';

export const HoldingEnd = describedEnum('HoldingEnd', 'How a holding ended, or whether it did.', {
  GIVEN_UP: 'An event names the holder as the one who gave it up.',
  GIVEN_UP_IMPLIED: 'An event does not say who gave it up; that the holder did is implied.',
  STILL_HELD: 'No later event is recorded: the holder has it still.',
  NOT_RECORDED: 'Somebody else gave it up later; how it came to them is not recorded.',
});
export type HoldingEnd = keyof typeof HoldingEnd;

@ObjectType({ description: 'Somebody held the item for a time.', simpleResolvers: true })
export class Holding {
  @Field(() => Boolean, { description: 'True where the holder is the owner of this collection.' })
  isOwnCollection!: boolean;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'First day on which it may have come to the holder; null if unknown.',
  })
  cameEarliestOn!: string | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'Last day on which it may have come to the holder; null if unknown.',
  })
  cameLatestOn!: string | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'First day on which it may have gone; null if unknown, or if it has not.',
  })
  wentEarliestOn!: string | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'Last day on which it may have gone; null if unknown, or if it has not.',
  })
  wentLatestOn!: string | null;

  @Field(() => HoldingEnd, { description: 'How it ended, or whether it did.' })
  end!: HoldingEnd;
}

@ObjectType({
  description: 'A time in which nobody is known to have held the item.',
  simpleResolvers: true,
})
export class ProvenanceGap {
  @Field(() => GraphQLLocalDate, { description: 'Its first day.' })
  from!: string;

  @Field(() => GraphQLLocalDate, { description: 'Its last day.' })
  to!: string;

  @Field(() => Int, { description: 'Its length in days, whatever the true dates are: at least.' })
  daysAtLeast!: number;

  @Field(() => Int, { description: 'Its length in days between dates that are certain: at most.' })
  daysAtMost!: number;
}

export const CustodyKind = describedEnum(
  'CustodyKind',
  'Where a thing is without changing hands.',
  {
    LENT: 'Lent by whoever held it.',
    LENT_TO_US: 'With us, and lent by whose it is.',
    STORED: 'Put away.',
    SHOWN: 'On show.',
  },
);
export type CustodyKind = keyof typeof CustodyKind;

@ObjectType({
  description: 'A time in which the item was kept somewhere without changing hands.',
  simpleResolvers: true,
})
export class Custody {
  @Field(() => CustodyKind, { description: 'How it was kept.' })
  kind!: CustodyKind;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The first day on which it may have begun; null if unknown.',
  })
  startEarliestOn!: string | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The last day on which it may have lasted; null if it lasts, or if unknown.',
  })
  endLatestOn!: string | null;

  @Field(() => String, { nullable: true, description: 'Where; null if not recorded.' })
  placeName!: string | null;

  @Field(() => Boolean, {
    description: 'True for a loan on record; false for what the past is said to have been.',
  })
  isOnRecordAsLoan!: boolean;
}

@ObjectType({
  description: 'A time in which, by what is recorded, several people held the item at once.',
  simpleResolvers: true,
})
export class HoldingOverlap {
  @Field(() => GraphQLLocalDate, { description: 'The day from which they all surely held it.' })
  from!: string;

  @Field(() => GraphQLLocalDate, { description: 'The day until which they all surely held it.' })
  to!: string;
}

@ObjectType({
  description: 'Who held the item, and how much of the time since its making is accounted for.',
  simpleResolvers: true,
})
export class ProvenanceChain {
  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day from which on it is looked at; null when nothing is dated.',
  })
  coveredFrom!: string | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Share, 0 to 1, of the days on which somebody surely held it; null as above.',
  })
  certainShare!: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Share, 0 to 1, of the days on which somebody may have held it; null as above.',
  })
  possibleShare!: number | null;

  @Field(() => [ProvenanceGap], { description: 'Times that are not accounted for.' })
  gaps!: ProvenanceGap[];
}
