import { Field, ObjectType } from 'type-graphql';

@ObjectType({ description: 'Where a page ends, and whether more follows.', simpleResolvers: true })
export class PageInfo {
  @Field(() => Boolean, { description: 'More follows after this page.' })
  hasNextPage!: boolean;

  @Field(() => Boolean, { description: 'The page was asked for with `after`.' })
  hasPreviousPage!: boolean;

  @Field(() => String, { nullable: true, description: 'Cursor of the first row; null if none.' })
  startCursor!: string | null;

  @Field(() => String, {
    nullable: true,
    description: 'Cursor of the last row, to be sent as `after` for the next page; null if none.',
  })
  endCursor!: string | null;
}
