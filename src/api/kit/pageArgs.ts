import { ArgsType, Field, Int } from 'type-graphql';
import { GraphQLError } from 'graphql';

export const defaultPageSize = 20;
export const largestPageSize = 100;

@ArgsType()
export class PageArgs {
  @Field(() => Int, {
    defaultValue: defaultPageSize,
    description: 'How many rows at the most, from 1 to 100.',
  })
  first!: number;

  @Field(() => String, { nullable: true, description: 'Rows after this cursor.' })
  after!: string | null;
}

/** @throws GraphQLError when `first` is outside its bounds: the query is to be mended. */
export function pageSize(first: unknown): number {
  const size = first === undefined || first === null ? defaultPageSize : Number(first);
  if (Number.isInteger(size) && size >= 1 && size <= largestPageSize) return size;
  throw new GraphQLError(`"first" must be from 1 to ${largestPageSize}; it was ${String(first)}.`, {
    extensions: { code: 'BAD_USER_INPUT' },
  });
}
