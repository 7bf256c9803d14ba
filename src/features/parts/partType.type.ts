import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { PartKind } from './partKind.js';

@ObjectType({ description: 'What a part is rated for.', simpleResolvers: true })
export class Rating {
  @Field(() => String, { description: 'Name of the quantity: heater voltage, tolerance.' })
  name!: string;

  @Field(() => DecimalScalar, { description: 'The value, in `unit`.' })
  value!: string;

  @Field(() => String, { description: 'UCUM code of the unit: V, mA, uF.' })
  unit!: string;

  @Field(() => String, { nullable: true, description: 'Where it is published; null if unknown.' })
  source!: string | null;
}

@ObjectType({
  implements: Node,
  description: 'A kind of part with its ratings: a 6146B, a 0.1 µF 600 V capacitor.',
  simpleResolvers: true,
})
export class PartType extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => PartKind, { description: 'What sort of part it is.' })
  kind!: PartKind;

  @Field(() => String, { description: 'What it is called: 6146B.' })
  designation!: string;

  @Field(() => String, { nullable: true, description: 'In a few words; null if not recorded.' })
  description!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Since when it is no longer offered in lists; null while it is.',
  })
  retiredAt!: string | null;
}

export const PartTypeConnection = connectionOf('PartType', () => PartType, 'part types');
