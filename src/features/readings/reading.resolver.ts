import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { carryOutMany } from '../../api/kit/carryOutMany.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Item } from '../items/item.type.js';
import { Component } from '../parts/component.type.js';
import { Party } from '../parties/party.type.js';
import { changeReading } from './changeReading.js';
import { ChangeReadingInput, RecordReadingsInput } from './reading.inputs.js';
import { Reading, ReadingConnection } from './reading.type.js';
import { recordReadings } from './recordReadings.js';
import { Verdict } from './verdict.type.js';

const RecordReadingsPayload = payloadOf(
  'recordReadings',
  'readings',
  () => [Reading],
  'The readings with their verdicts, in the order sent; null when none was kept.',
);
const ChangeReadingPayload = payloadOf(
  'changeReading',
  'reading',
  () => Reading,
  'The reading as it is now.',
);

@Resolver(() => Reading)
export class ReadingResolver {
  @FieldResolver(() => Verdict, { description: 'What the limits say of it, and which limits.' })
  verdict(@Root() reading: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(reading, info);
  }

  @FieldResolver(() => Component, {
    nullable: true,
    description: 'The component that was measured; null for a reading on an item.',
  })
  component(@Root() reading: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(reading, info);
  }

  @FieldResolver(() => Item, {
    nullable: true,
    description: 'The item that was measured; null for a reading on a component.',
  })
  item(@Root() reading: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(reading, info);
  }

  @FieldResolver(() => Party, { nullable: true, description: 'Who took it; null if unrecorded.' })
  takenBy(@Root() reading: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(reading, info);
  }

  @Mutation(() => RecordReadingsPayload, {
    description: 'Writes down readings taken at one sitting: all, or none.',
  })
  recordReadings(
    @Arg('input', () => RecordReadingsInput, { description: 'The readings.' })
    input: RecordReadingsInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asReadings = { field: 'readings', typeName: 'Reading' };
    return carryOutMany(context, info, asReadings, (work) => recordReadings(work, input));
  }

  @Mutation(() => ChangeReadingPayload, {
    description: 'Corrects a reading that was written down wrongly; the history keeps the old one.',
  })
  changeReading(
    @Arg('input', () => ChangeReadingInput, { description: 'The correction.' })
    input: ChangeReadingInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asReading = { field: 'reading', typeName: 'Reading' };
    return carryOut(context, info, asReading, (work) => changeReading(work, input));
  }
}

@Resolver(() => Item)
export class ItemReadingsResolver {
  @FieldResolver(() => ReadingConnection, {
    description: 'Readings on the item as a whole, the latest first; its parts have their own.',
  })
  readings(@Root() item: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}
