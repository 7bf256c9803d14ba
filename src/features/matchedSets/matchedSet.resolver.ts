import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { Component } from '../parts/component.type.js';
import { changeMatchedSet } from './changeMatchedSet.js';
import { createMatchedSet } from './createMatchedSet.js';
import { ChangeMatchedSetInput, CreateMatchedSetInput } from './matchedSet.inputs.js';
import { matchedSetReads } from './matchedSet.reads.js';
import { MatchedSet, MatchedSetConnection, Mismatch } from './matchedSet.type.js';

const asSet = { field: 'matchedSet', typeName: 'MatchedSet' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'matchedSet', () => MatchedSet, description);
const CreateMatchedSetPayload = payload('createMatchedSet', 'The new set.');
const ChangeMatchedSetPayload = payload('changeMatchedSet', 'The set as it is now.');

@Resolver(() => MatchedSet)
export class MatchedSetResolver {
  @Query(() => MatchedSetConnection, { description: 'Matched sets by name.' })
  matchedSets(
    @Args() args: PageArgs,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return rootPage(context, info, args, {
      ...matchedSetReads,
      from: matchedSetReads.table,
      sortBy: 'matched_set.name',
    });
  }

  @FieldResolver(() => [Component], { description: 'The components of the set.' })
  components(@Root() set: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(set, info);
  }

  @FieldResolver(() => Mismatch, { description: 'How far they lie apart, by their readings.' })
  mismatch(@Root() set: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(set, info);
  }

  @Mutation(() => CreateMatchedSetPayload, {
    description: 'Says which components are to read alike, and how nearly.',
  })
  createMatchedSet(
    @Arg('input', () => CreateMatchedSetInput, { description: 'The set.' })
    input: CreateMatchedSetInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asSet, (work) => createMatchedSet(work, input));
  }

  @Mutation(() => ChangeMatchedSetPayload, { description: 'Changes a matched set.' })
  changeMatchedSet(
    @Arg('input', () => ChangeMatchedSetInput, { description: 'The change.' })
    input: ChangeMatchedSetInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asSet, (work) => changeMatchedSet(work, input));
  }
}

@Resolver(() => Component)
export class MatchedSetsOfComponentResolver {
  @FieldResolver(() => [MatchedSet], { description: 'The matched sets that it belongs to.' })
  matchedSets(@Root() component: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(component, info);
  }
}
