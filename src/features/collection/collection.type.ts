import { GraphQLCurrency, GraphQLTimeZone } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';

@ObjectType({ description: 'Whose collection this is, and how it stands.', simpleResolvers: true })
export class Collection {
  @Field(() => Int, {
    description: 'Counts changes, from 0 before anything was said; send it back with your change.',
  })
  version!: number;

  @Field(() => String, { description: 'What the collection is called.' })
  name!: string;

  @Field(() => GraphQLCurrency, {
    description: 'The currency that the collector counts in, ISO 4217.',
  })
  homeCurrency!: string;

  @Field(() => GraphQLTimeZone, {
    description: 'IANA zone in which bench hours are kept unless a session says otherwise.',
  })
  zone!: string;

  @Field(() => String, {
    nullable: true,
    description: 'The class of the licence held, in words; null if unsaid. The licence governs.',
  })
  licenceClass!: string | null;
}
