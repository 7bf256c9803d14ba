import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { TubeClass } from '../reference/tubeReference.type.js';
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
  description: 'How a tube is connected and what it is made to do, as the collector wrote it down.',
  simpleResolvers: true,
})
export class TubeFit {
  @Field(() => String, { nullable: true, description: 'Basing code: 7BK; null if not said.' })
  base!: string | null;

  @Field(() => TubeClass, { nullable: true, description: 'What it is made to do; or null.' })
  tubeClass!: TubeClass | null;

  @Field(() => String, { nullable: true, description: 'Where it is published; null if not said.' })
  source!: string | null;

  @Field(() => Boolean, {
    description: 'A source other than memory is named: computed substitutes may rest on it.',
  })
  isConfirmed!: boolean;
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
