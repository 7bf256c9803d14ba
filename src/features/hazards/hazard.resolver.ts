import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Finding } from '../findings/finding.type.js';
import { Item } from '../items/item.type.js';
import { Party } from '../parties/party.type.js';
import { changeHazard } from './changeHazard.js';
import { clearHazard } from './clearHazard.js';
import { ChangeHazardInput, ClearHazardInput, RaiseHazardInput } from './hazard.inputs.js';
import { Hazard } from './hazard.type.js';
import { hazardCatalogue } from './hazardCatalogue.js';
import { hazardGuide } from './hazardGuide.js';
import { HazardGuideType } from './hazardGuide.type.js';
import { raiseHazard } from './raiseHazard.js';

const asHazard = { field: 'hazard', typeName: 'Hazard' };
const hazardPayload = (mutation: string, description: string) =>
  payloadOf(mutation, 'hazard', () => Hazard, description);
const RaiseHazardPayload = hazardPayload('raiseHazard', 'The hazard, with its cautions.');
const ClearHazardPayload = hazardPayload('clearHazard', 'The hazard as it is now.');
const ChangeHazardPayload = hazardPayload('changeHazard', 'The hazard as it is now.');

@Resolver(() => Hazard)
export class HazardResolver {
  @Query(() => [HazardGuideType], { description: 'What to know of each kind of hazard.' })
  hazardKinds() {
    return [...hazardCatalogue.values()];
  }

  @FieldResolver(() => Item, { description: 'The rig or accessory that it is in.' })
  item(@Root() hazard: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(hazard, info);
  }

  @FieldResolver(() => Finding, {
    nullable: true,
    description: 'The finding that it belongs to; null if none.',
  })
  finding(@Root() hazard: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(hazard, info);
  }

  @FieldResolver(() => Party, {
    nullable: true,
    description: 'Who did the check that cleared it; null while it stands.',
  })
  clearedBy(@Root() hazard: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(hazard, info);
  }

  @FieldResolver(() => [String], { description: 'The usual cautions, the gravest first.' })
  cautions(@Root() hazard: Hazard) {
    return hazardGuide(hazard.kind).cautions;
  }

  @FieldResolver(() => String, { description: 'Where the cautions come from.' })
  source(@Root() hazard: Hazard) {
    return hazardGuide(hazard.kind).source;
  }

  @FieldResolver(() => HazardGuideType, {
    description: 'All that the catalogue says of this kind: protection, what clears it, advice.',
  })
  guide(@Root() hazard: Hazard) {
    return hazardGuide(hazard.kind);
  }

  @Mutation(() => RaiseHazardPayload, { description: 'Writes down something that can hurt.' })
  raiseHazard(
    @Arg('input', () => RaiseHazardInput, { description: 'The hazard.' }) input: RaiseHazardInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asHazard, (work) => raiseHazard(work, input));
  }

  @Mutation(() => ClearHazardPayload, { description: 'Clears a hazard by a check that was done.' })
  clearHazard(
    @Arg('input', () => ClearHazardInput, { description: 'The check.' }) input: ClearHazardInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asHazard, (work) => clearHazard(work, input));
  }

  @Mutation(() => ChangeHazardPayload, {
    description: 'Corrects a hazard, or lets it stand again.',
  })
  changeHazard(
    @Arg('input', () => ChangeHazardInput, { description: 'The correction.' })
    input: ChangeHazardInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asHazard, (work) => changeHazard(work, input));
  }
}
