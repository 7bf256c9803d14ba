import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { Zone } from '../inspections/zone.js';

@ObjectType({
  implements: Node,
  description: 'A place in a complete set, and the part type expected in it.',
  simpleResolvers: true,
})
export class FitOutPosition extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: 'As on the circuit diagram, or in words: V1, bottom cover.' })
  designator!: string;

  @Field(() => Zone, { description: 'Where in the set it is looked for.' })
  zone!: Zone;

  @Field(() => Boolean, { description: 'A set without it is not complete.' })
  isRequired!: boolean;

  @Field(() => Int, {
    nullable: true,
    description: 'How much it counts in the originality of a set; null: 1.',
  })
  weight!: number | null;

  @Field(() => Int, { description: 'Its place in the order of checking off, from 1.' })
  ordinal!: number;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}

export const FitOutPositionConnection = connectionOf(
  'FitOutPosition',
  () => FitOutPosition,
  'positions of a fit-out',
);
