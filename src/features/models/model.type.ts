import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { ItemKind } from '../items/itemKind.js';

@ObjectType({
  implements: Node,
  description: 'What a make and type should be.',
  simpleResolvers: true,
})
export class Model extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => ItemKind, { description: 'Whether it is a set or serves one.' })
  itemKind!: ItemKind;

  @Field(() => String, { description: 'Who made it.' })
  maker!: string;

  @Field(() => String, { description: 'What its maker called it.' })
  designation!: string;

  @Field(() => String, { nullable: true, description: 'In a few words; null if not recorded.' })
  description!: string | null;

  @Field(() => Int, { nullable: true, description: 'First year made; null if not recorded.' })
  firstYearMade!: number | null;

  @Field(() => Int, { nullable: true, description: 'Last year made; null if not recorded.' })
  lastYearMade!: number | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Since when it is no longer offered in lists; null while it is.',
  })
  retiredAt!: string | null;
}

export const ModelConnection = connectionOf('Model', () => Model, 'models');
