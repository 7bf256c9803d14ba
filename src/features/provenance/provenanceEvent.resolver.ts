import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Item } from '../items/item.type.js';
import { Party } from '../parties/party.type.js';
import { changeProvenanceEvent } from './changeProvenanceEvent.js';
import {
  ChangeProvenanceEventInput,
  RecordProvenanceEventInput,
} from './provenanceEvent.inputs.js';
import { ProvenanceEvent } from './provenanceEvent.type.js';
import { recordProvenanceEvent } from './recordProvenanceEvent.js';

const asEvent = { field: 'provenanceEvent', typeName: 'ProvenanceEvent' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'provenanceEvent', () => ProvenanceEvent, description);
const RecordProvenanceEventPayload = payload('recordProvenanceEvent', 'The new event.');
const ChangeProvenanceEventPayload = payload('changeProvenanceEvent', 'The event as it is now.');

@Resolver(() => ProvenanceEvent)
export class ProvenanceEventResolver {
  @FieldResolver(() => Item, { description: 'The item that it happened to.' })
  item(@Root() event: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(event, info);
  }

  @FieldResolver(() => Party, { nullable: true, description: 'From whom; null if unknown.' })
  fromParty(@Root() event: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(event, info);
  }

  @FieldResolver(() => Party, {
    nullable: true,
    description: 'To whom, or by whom; null if unknown.',
  })
  toParty(@Root() event: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(event, info);
  }

  @Mutation(() => RecordProvenanceEventPayload, {
    description: 'Writes down something that happened to an item, as uncertain as it is.',
  })
  recordProvenanceEvent(
    @Arg('input', () => RecordProvenanceEventInput, { description: 'The event.' })
    input: RecordProvenanceEventInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asEvent, (work) => recordProvenanceEvent(work, input));
  }

  @Mutation(() => ChangeProvenanceEventPayload, {
    description: 'Corrects what is known of an event, or what it rests on.',
  })
  changeProvenanceEvent(
    @Arg('input', () => ChangeProvenanceEventInput, { description: 'The change.' })
    input: ChangeProvenanceEventInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asEvent, (work) => changeProvenanceEvent(work, input));
  }
}
