import { GraphQLDateTimeISO, GraphQLLocalDate } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { Problem } from '../../api/kit/problem.type.js';

@ObjectType({
  implements: Node,
  description:
    'Something that opens ways out to one program that reads. The token itself is kept nowhere: only its digest, which no answer shows.',
  simpleResolvers: true,
})
export class ReadToken extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: 'For whom or what it was made.' })
  name!: string;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The last day, in UTC, on which it opens anything; null: until it is taken back.',
  })
  lastDay!: string | null;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was made.' })
  madeAt!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Since when it opens nothing; null while it does.',
  })
  takenBackAt!: string | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day, in UTC, on which it last opened something; null if never.',
  })
  lastUsedOn!: string | null;
}

export const ReadTokenConnection = connectionOf('ReadToken', () => ReadToken, 'tokens');

@ObjectType({ description: 'What came of `makeReadToken`.', simpleResolvers: true })
export class MakeReadTokenPayload {
  @Field(() => ReadToken, { nullable: true, description: 'What the token opens.' })
  readToken!: object | null;

  @Field(() => String, {
    nullable: true,
    description: 'The token itself, this once: it is not kept and cannot be read again.',
  })
  token!: string | null;

  @Field(() => [Problem], {
    description: 'Why nothing was done; empty when it was. All problems at once.',
  })
  problems!: readonly Problem[];
}
