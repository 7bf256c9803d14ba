import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Acquisition } from '../acquisitions/acquisition.type.js';
import { Item } from '../items/item.type.js';
import { Party } from '../parties/party.type.js';
import { changeClaim } from './changeClaim.js';
import { ChangeClaimInput, RecordClaimInput } from './claim.inputs.js';
import { Claim, ClaimConnection } from './claim.type.js';
import { recordClaim } from './recordClaim.js';

const asClaim = { field: 'claim', typeName: 'Claim' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'claim', () => Claim, description);
const RecordClaimPayload = payload('recordClaim', 'The new claim.');
const ChangeClaimPayload = payload('changeClaim', 'The claim as it is now.');

@Resolver(() => Claim)
export class ClaimResolver {
  @FieldResolver(() => Item, {
    nullable: true,
    description: 'The item that it is about; null for a lot as a whole.',
  })
  item(@Root() claim: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(claim, info);
  }

  @FieldResolver(() => Acquisition, {
    nullable: true,
    description: 'The lot that it was said of or with; null if of none.',
  })
  acquisition(@Root() claim: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(claim, info);
  }

  @FieldResolver(() => Party, { nullable: true, description: 'Who said it; null if unknown.' })
  saidBy(@Root() claim: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(claim, info);
  }

  @Mutation(() => RecordClaimPayload, {
    description: 'Writes down what somebody said of an item or a lot: a claim, not a fact.',
  })
  recordClaim(
    @Arg('input', () => RecordClaimInput, { description: 'The claim.' }) input: RecordClaimInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asClaim, (work) => recordClaim(work, input));
  }

  @Mutation(() => ChangeClaimPayload, { description: 'Corrects how a claim was written down.' })
  changeClaim(
    @Arg('input', () => ChangeClaimInput, { description: 'The change.' }) input: ChangeClaimInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asClaim, (work) => changeClaim(work, input));
  }
}

@Resolver(() => Item)
export class ClaimsOfItemResolver {
  @FieldResolver(() => ClaimConnection, {
    description: 'What was said of it, in the order in which it was written down.',
  })
  claims(@Root() item: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}
