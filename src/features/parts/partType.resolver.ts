import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { equalTo, retiredIs } from '../../api/kit/conditions.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { containsWords } from '../../db/containsWords.js';
import { Limit } from '../readings/limit.type.js';
import { changePartType } from './changePartType.js';
import { createPartType } from './createPartType.js';
import { ChangePartTypeInput, CreatePartTypeInput, PartTypeFilter } from './partType.inputs.js';
import { partTypeReads } from './partType.reads.js';
import { PartType, PartTypeConnection, Rating, TubeFit } from './partType.type.js';

const asPartType = { field: 'partType', typeName: 'PartType' };
const CreatePartTypePayload = payloadOf(
  'createPartType',
  'partType',
  () => PartType,
  'The new part type.',
);
const ChangePartTypePayload = payloadOf(
  'changePartType',
  'partType',
  () => PartType,
  'It as it is now.',
);

@Resolver(() => PartType)
export class PartTypeResolver {
  @Query(() => PartTypeConnection, { description: 'Part types by designation.' })
  partTypes(
    @Args() args: PageArgs,
    @Arg('filter', () => PartTypeFilter, {
      defaultValue: { isRetired: false },
      description: 'Which.',
    })
    filter: PartTypeFilter,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return rootPage(context, info, args, {
      ...partTypeReads,
      from: partTypeReads.table,
      sortBy: 'part_type.designation',
      where: [
        ...containsWords(['part_type.designation', 'part_type.description'], filter.text ?? ''),
        ...equalTo('part_type.kind', filter.kind),
        ...retiredIs('part_type', filter.isRetired),
      ],
    });
  }

  @FieldResolver(() => [Rating], { description: 'What it is rated for, as written down.' })
  ratings(@Root() partType: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(partType, info);
  }

  @FieldResolver(() => TubeFit, {
    nullable: true,
    description: 'Of a tube: base and class by the own source of the collector; null if not said.',
  })
  tube(@Root() partType: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(partType, info);
  }

  @FieldResolver(() => [Limit], { description: 'What its readings are held against.' })
  limits(@Root() partType: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(partType, info);
  }

  @Mutation(() => CreatePartTypePayload, { description: 'Writes down a new kind of part.' })
  createPartType(
    @Arg('input', () => CreatePartTypeInput, { description: 'The new kind of part.' })
    input: CreatePartTypeInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asPartType, (work) => createPartType(work, input));
  }

  @Mutation(() => ChangePartTypePayload, { description: 'Changes a kind of part.' })
  changePartType(
    @Arg('input', () => ChangePartTypeInput, { description: 'The change.' })
    input: ChangePartTypeInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asPartType, (work) => changePartType(work, input));
  }
}
