import { GraphQLDateTimeISO } from 'graphql-scalars';
import { ArgsType, Field, Float, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';

@ArgsType()
export class AsOfArgs {
  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'As it was at this instant; now if left out.',
  })
  asOf?: Date | null;
}

@ObjectType({
  description: 'What share of a set is as it was made, as an interval.',
  simpleResolvers: true,
})
export class OriginalityShare {
  @Field(() => Int, { description: 'Positions, or weights, with the part the set was made with.' })
  original!: number;

  @Field(() => Int, { description: 'With another part.' })
  replaced!: number;

  @Field(() => Int, { description: 'With nothing in them.' })
  empty!: number;

  @Field(() => Int, { description: 'Of which nobody can say.' })
  unknown!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'Share, 0 to 1, if nothing unknown is original; null without a fit-out.',
  })
  low!: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Share, 0 to 1, if everything unknown is original; null without a fit-out.',
  })
  high!: number | null;
}

@ObjectType({
  description: "How original a set is, over the positions of its model's fit-out.",
  simpleResolvers: true,
})
export class Originality {
  @Field(() => OriginalityShare, { description: 'Every position counted once.' })
  byPosition!: OriginalityShare;

  @Field(() => OriginalityShare, { description: 'Every position counted by its weight.' })
  byWeight!: OriginalityShare;

  @Field(() => Basis, { description: 'How it came about.' })
  basis!: Basis;
}

@ObjectType({
  description: 'Everything that sat in one position of an item, the first first.',
  simpleResolvers: true,
})
export class PositionHistory {
  @Field(() => String, { description: 'The position.' })
  designator!: string;
}
