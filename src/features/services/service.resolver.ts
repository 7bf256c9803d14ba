import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Accessory } from '../items/accessory.type.js';
import { Rig } from '../items/rig.type.js';
import { assignAccessory } from './assignAccessory.js';
import { releaseAccessory } from './releaseAccessory.js';
import { AssignAccessoryInput, ReleaseAccessoryInput } from './service.inputs.js';
import { Service } from './service.type.js';

const asService = { field: 'service', typeName: 'Service' };
const AssignAccessoryPayload = payloadOf(
  'assignAccessory',
  'service',
  () => Service,
  'The service that begins.',
);
const ReleaseAccessoryPayload = payloadOf(
  'releaseAccessory',
  'service',
  () => Service,
  'The service that has ended.',
);

@Resolver(() => Service)
export class ServiceResolver {
  @FieldResolver(() => Accessory, { description: 'The accessory that serves.' })
  accessory(@Root() service: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(service, info);
  }

  @FieldResolver(() => Rig, { description: 'The rig that is served.' })
  rig(@Root() service: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(service, info);
  }

  @Mutation(() => AssignAccessoryPayload, { description: 'Lets an accessory serve a rig.' })
  assignAccessory(
    @Arg('input', () => AssignAccessoryInput, { description: 'Which serves which, and how.' })
    input: AssignAccessoryInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asService, (work) => assignAccessory(work, input));
  }

  @Mutation(() => ReleaseAccessoryPayload, { description: 'Ends the service of an accessory.' })
  releaseAccessory(
    @Arg('input', () => ReleaseAccessoryInput, { description: 'Which service ends.' })
    input: ReleaseAccessoryInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asService, (work) => releaseAccessory(work, input));
  }
}
