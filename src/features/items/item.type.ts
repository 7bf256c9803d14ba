import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, InterfaceType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';

/** Field resolvers for what both kinds of item have are written with `@Resolver(() => Item)`. */
@InterfaceType({
  implements: Node,
  description: 'One physical thing in the collection: a rig, or an accessory that serves rigs.',
  resolveType: (row: { __typename: string }) => row.__typename,
})
export abstract class Item extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: "The collector's own number, unique: R-007." })
  inventoryNumber!: string;

  @Field(() => String, { nullable: true, description: 'A name of its own; null if it has none.' })
  name!: string | null;

  @Field(() => String, { nullable: true, description: 'Serial number; null if not recorded.' })
  serialNumber!: string | null;

  @Field(() => String, {
    nullable: true,
    description: 'When it was made, as EDTF (ISO 8601-2); null if not recorded.',
  })
  madeEdtf!: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it left the collection; null while it is in it.',
  })
  retiredAt!: string | null;

  @Field(() => String, { nullable: true, description: 'Why it left; null while it is here.' })
  retiredReason!: string | null;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was first written down.' })
  recordedAt!: string;

  @Field(() => GraphQLDateTimeISO, { description: 'When its own data last changed.' })
  changedAt!: string;
}

export const ItemConnection = connectionOf('Item', () => Item, 'items');
