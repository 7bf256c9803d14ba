import { Field, Int, ObjectType, type ClassType } from 'type-graphql';
import { PageInfo } from './pageInfo.type.js';
import type { Page } from './page.js';
import type { Row } from './typeReads.js';

/** The Relay connection and edge types of a node type. */
export function connectionOf(
  name: string,
  node: () => ClassType | object,
  plural: string,
): ClassType<Page<Row>> {
  const type = node as () => ClassType;

  @ObjectType(`${name}Edge`, {
    description: `One of the ${plural} in a list, with its place there.`,
    simpleResolvers: true,
  })
  class Edge {
    @Field(() => String, { description: 'Its place in this order.' })
    cursor!: string;

    @Field(type, { description: 'The thing itself.' })
    node!: object;
  }

  @ObjectType(`${name}Connection`, {
    description: `A page of ${plural}.`,
    simpleResolvers: true,
  })
  class Connection {
    @Field(() => [Edge], { description: 'The rows with their cursors.' })
    edges!: Edge[];

    @Field(() => [type()] as never, { description: 'The rows.' })
    nodes!: object[];

    @Field(() => PageInfo, { description: 'Where the page ends.' })
    pageInfo!: PageInfo;

    @Field(() => Int, { description: 'How many there are in all, on every page together.' })
    totalCount!: number;
  }
  return Connection as unknown as ClassType<Page<Row>>;
}
