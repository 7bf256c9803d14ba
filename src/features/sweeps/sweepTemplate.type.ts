import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { Node } from '../../api/kit/node.type.js';
import { ReadingTier } from '../readings/readingTier.js';

@ObjectType({ description: 'One column of a sweep.', simpleResolvers: true })
export class SweepQuantity {
  @Field(() => String, { description: 'What is measured, named as in the limits.' })
  quantity!: string;

  @Field(() => String, { description: 'Unit, UCUM.' })
  unit!: string;
}

@ObjectType({
  implements: Node,
  description: 'What is read in which positions of a model, and how, under a name.',
  simpleResolvers: true,
})
export class SweepTemplate extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: 'How it is called.' })
  name!: string;

  @Field(() => ReadingTier, { description: 'On a tester, or in circuit.' })
  tier!: ReadingTier;

  @Field(() => String, { nullable: true, description: 'The instrument; null if none is named.' })
  instrument!: string | null;

  @Field(() => String, { nullable: true, description: 'How it is done; null if it does not say.' })
  method!: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Since when it is offered no more; null while it is.',
  })
  retiredAt!: string | null;
}
