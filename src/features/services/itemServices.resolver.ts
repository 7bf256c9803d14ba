import type { GraphQLResolveInfo } from 'graphql';
import { Arg, FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Accessory } from '../items/accessory.type.js';
import { Rig } from '../items/rig.type.js';
import { Service } from './service.type.js';

const withEnded = { defaultValue: false, description: 'Those that have ended too.' };

@Resolver(() => Accessory)
export class AccessoryServicesResolver {
  @FieldResolver(() => [Service], { description: 'The rigs that it serves, and in which role.' })
  serves(
    @Root() accessory: object,
    @Arg('withEnded', () => Boolean, withEnded) _withEnded: boolean,
    @Info() info: GraphQLResolveInfo,
  ) {
    return loadedField(accessory, info);
  }
}

@Resolver(() => Rig)
export class RigServicesResolver {
  @FieldResolver(() => [Service], { description: 'The accessories that serve it.' })
  servedBy(
    @Root() rig: object,
    @Arg('withEnded', () => Boolean, withEnded) _withEnded: boolean,
    @Info() info: GraphQLResolveInfo,
  ) {
    return loadedField(rig, info);
  }
}
