import { Field, ID, InterfaceType } from 'type-graphql';

/** Relay's object identification. */
@InterfaceType({
  description: 'Anything that can be asked for again by its id.',
  resolveType: (row: { __typename: string }) => row.__typename,
})
export abstract class Node {
  @Field(() => ID, { description: 'Unique in the collection, and the same for ever.' })
  id!: string;
}
