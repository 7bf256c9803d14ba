import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, Info, Mutation, Query, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { equalTo, retiredIs } from '../../api/kit/conditions.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { containsWords } from '../../db/containsWords.js';
import { changeParty } from './changeParty.js';
import { createParty } from './createParty.js';
import { ChangePartyInput, CreatePartyInput, PartyFilter } from './party.inputs.js';
import { partyReads } from './party.reads.js';
import { Party, PartyConnection } from './party.type.js';

const asParty = { field: 'party', typeName: 'Party' };
const CreatePartyPayload = payloadOf('createParty', 'party', () => Party, 'The new party.');
const ChangePartyPayload = payloadOf('changeParty', 'party', () => Party, 'It as it is now.');

@Resolver(() => Party)
export class PartyResolver {
  @Query(() => PartyConnection, { description: 'People and organisations by name.' })
  parties(
    @Args() args: PageArgs,
    @Arg('filter', () => PartyFilter, { defaultValue: { isRetired: false }, description: 'Which.' })
    filter: PartyFilter,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return rootPage(context, info, args, {
      ...partyReads,
      from: partyReads.table,
      sortBy: 'party.name',
      where: [
        ...containsWords(['party.name', 'party.contact'], filter.text ?? ''),
        ...equalTo('party.kind', filter.kind),
        ...retiredIs('party', filter.isRetired),
      ],
    });
  }

  @Mutation(() => CreatePartyPayload, { description: 'Writes down a person or organisation.' })
  createParty(
    @Arg('input', () => CreatePartyInput, { description: 'Who.' }) input: CreatePartyInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asParty, (work) => createParty(work, input));
  }

  @Mutation(() => ChangePartyPayload, { description: 'Changes a person or organisation.' })
  changeParty(
    @Arg('input', () => ChangePartyInput, { description: 'The change.' }) input: ChangePartyInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asParty, (work) => changeParty(work, input));
  }
}
