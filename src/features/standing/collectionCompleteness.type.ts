import { Field, Float, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';

@ObjectType({
  description: 'What is there, over the whole collection, of what complete ones would have.',
  simpleResolvers: true,
})
export class CollectionCompleteness {
  @Field(() => Float, {
    nullable: true,
    description: 'Present over required, 0 to 1; null when no model has a fit-out.',
  })
  share!: number | null;

  @Field(() => Int, { description: 'Positions that complete ones must have filled.' })
  required!: number;

  @Field(() => Int, { description: 'Of those, known to be filled rightly.' })
  present!: number;

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
