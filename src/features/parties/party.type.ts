import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { PartyKind } from './partyKind.js';

@ObjectType({
  implements: Node,
  description: 'A person or an organisation: who works, who sold, who owned.',
  simpleResolvers: true,
})
export class Party extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => PartyKind, { description: 'A person or an organisation.' })
  kind!: PartyKind;

  @Field(() => String, { description: 'Its name.' })
  name!: string;

  @Field(() => String, {
    nullable: true,
    description: 'How to reach it: address, telephone, call sign; null if not recorded.',
  })
  contact!: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Since when it is no longer offered in lists; null while it is.',
  })
  retiredAt!: string | null;
}

export const PartyConnection = connectionOf('Party', () => Party, 'people and organisations');
