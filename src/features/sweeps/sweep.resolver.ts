import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Item } from '../items/item.type.js';
import { Component } from '../parts/component.type.js';
import { Reading } from '../readings/reading.type.js';
import { recordSweep } from './recordSweep.js';
import { RecordSweepInput } from './sweep.inputs.js';
import { Sweep, SweepRow } from './sweep.type.js';
import { SweepTemplate } from './sweepTemplate.type.js';

const asSweep = { field: 'sweep', typeName: 'Sweep' };
const RecordSweepPayload = payloadOf(
  'recordSweep',
  'sweep',
  () => Sweep,
  'What became of it, row by row.',
);

@Resolver(() => Sweep)
export class SweepResolver {
  @FieldResolver(() => Item, { description: 'The rig or accessory.' })
  item(@Root() sweep: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(sweep, info);
  }

  @FieldResolver(() => [SweepRow], { description: 'Its rows, as sent.' })
  rows(@Root() sweep: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(sweep, info);
  }

  @FieldResolver(() => SweepTemplate, {
    nullable: true,
    description: 'The template that it was taken with; null if without one.',
  })
  template(@Root() sweep: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(sweep, info);
  }

  @Mutation(() => RecordSweepPayload, {
    description:
      'Keeps the readings of many positions, taken in one go. Rows that cannot be kept are named; the others are. Sent again, it changes nothing.',
  })
  recordSweep(
    @Arg('input', () => RecordSweepInput, { description: 'The sweep.' }) input: RecordSweepInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asSweep, (work) => recordSweep(work, input));
  }
}

@Resolver(() => SweepRow)
export class SweepRowResolver {
  @FieldResolver(() => Component, {
    nullable: true,
    description: 'What sat in the position then; null where nothing is recorded.',
  })
  component(@Root() row: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(row, info);
  }

  @FieldResolver(() => [Reading], { description: 'The readings that were kept.' })
  readings(@Root() row: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(row, info);
  }
}
