import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Party } from '../parties/party.type.js';
import { changeEventParty } from './changeEventParty.js';
import { ChangeEventPartyInput, EventParty, RecordEventPartyInput } from './eventParty.type.js';
import { ProvenanceEvent } from './provenanceEvent.type.js';
import { recordEventParty } from './recordEventParty.js';

const asPart = { field: 'eventParty', typeName: 'EventParty' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'eventParty', () => EventParty, description);
const RecordEventPartyPayload = payload('recordEventParty', 'The part that somebody had.');
const ChangeEventPartyPayload = payload('changeEventParty', 'The part as it is now.');

@Resolver(() => ProvenanceEvent)
export class PartiesOfEventResolver {
  @FieldResolver(() => [EventParty], {
    description: 'Who else had a part in it, beside those who gave and received.',
  })
  parties(@Root() event: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(event, info);
  }
}

@Resolver(() => EventParty)
export class EventPartyResolver {
  @FieldResolver(() => Party, { description: 'Who.' })
  party(@Root() part: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(part, info);
  }

  @Mutation(() => RecordEventPartyPayload, {
    description: 'Writes down who had a part in an event: an auctioneer, a keeper, a witness.',
  })
  recordEventParty(
    @Arg('input', () => RecordEventPartyInput, { description: 'The part.' })
    input: RecordEventPartyInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asPart, (work) => recordEventParty(work, input));
  }

  @Mutation(() => ChangeEventPartyPayload, { description: 'Corrects the part somebody had.' })
  changeEventParty(
    @Arg('input', () => ChangeEventPartyInput, { description: 'The change.' })
    input: ChangeEventPartyInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asPart, (work) => changeEventParty(work, input));
  }
}
