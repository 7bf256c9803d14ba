import { GraphQLCurrency, GraphQLTimeZone } from 'graphql-scalars';
import { ItuRegion } from '../reference/ituRegion.js';
import { Field, ID, InputType, Int } from 'type-graphql';

@InputType({ description: 'What is to be said of the collection; what is left out stays.' })
export class DescribeCollectionInput {
  @Field(() => Int, { description: 'The version that you saw; 0 for the first time.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'What the collection is called.' })
  name?: string;

  @Field(() => ID, { nullable: true, description: 'The party that owns it; null for unsaid.' })
  ownerId?: string | null;

  @Field(() => GraphQLCurrency, {
    nullable: true,
    description: 'The currency that the collector counts in, ISO 4217.',
  })
  homeCurrency?: string;

  @Field(() => GraphQLTimeZone, {
    nullable: true,
    description: 'IANA zone in which bench hours are kept unless a session says otherwise.',
  })
  zone?: string;

  @Field(() => ItuRegion, {
    nullable: true,
    description: 'The ITU region of the station, by which bands are named; null for unsaid.',
  })
  ituRegion?: ItuRegion | null;

  @Field(() => String, {
    nullable: true,
    description: 'The class of the licence held, in words; null for unsaid.',
  })
  licenceClass?: string | null;
}
