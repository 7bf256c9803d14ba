import type { GraphQLResolveInfo } from 'graphql';
import { GraphQLTimeZone } from 'graphql-scalars';
import { Arg, Ctx, FieldResolver, Info, Mutation, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField, loadRelations } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import type { Row } from '../../api/kit/typeReads.js';
import { ItuRegion } from '../reference/ituRegion.js';
import { Party } from '../parties/party.type.js';
import { DescribeCollectionInput } from './collection.inputs.js';
import { collectionReads } from './collection.reads.js';
import { Collection } from './collection.type.js';
import { describeCollection } from './describeCollection.js';
import { undescribedCollection } from './undescribedCollection.js';

const DescribeCollectionPayload = payloadOf(
  'describeCollection',
  'collection',
  () => Collection,
  'The collection as it is described now.',
);

@Resolver(() => Collection)
export class CollectionResolver {
  @Query(() => Collection, { description: 'The collection as a whole.' })
  async collection(
    @Arg('zone', () => GraphQLTimeZone, {
      defaultValue: 'UTC',
      description: 'Zone to count in as long as the collection has none of its own.',
    })
    zone: string,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const { columns, table } = collectionReads;
    const [kept] = await context.database.reader.rows<Row>(
      `SELECT ${columns} FROM ${table} LIMIT 1`,
    );
    const row: Row = kept ?? { id: 'undescribed', version: 0, ...undescribedCollection(zone) };
    await loadRelations(context, info, 'Collection', [row]);
    return row;
  }

  @FieldResolver(() => Party, { nullable: true, description: 'Who owns it; null if unsaid.' })
  owner(@Root() collection: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(collection, info);
  }

  @FieldResolver(() => ItuRegion, {
    nullable: true,
    description: 'The ITU region of the station; null if unsaid.',
  })
  ituRegion(@Root() collection: { ituRegion: number | null }): ItuRegion | null {
    const { ituRegion } = collection;
    return ituRegion === null ? null : (`REGION_${ituRegion}` as ItuRegion);
  }

  @Mutation(() => DescribeCollectionPayload, {
    description: 'Says whose collection this is and what it counts in.',
  })
  describeCollection(
    @Arg('input', () => DescribeCollectionInput, { description: 'What is to be said.' })
    input: DescribeCollectionInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asCollection = { field: 'collection', typeName: 'Collection' };
    return carryOut(context, info, asCollection, (work) => describeCollection(work, input));
  }
}
