import type { GraphQLResolveInfo } from 'graphql';
import { FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Hazard } from '../hazards/hazard.type.js';
import { SessionHazard } from './sessionHazard.type.js';
import { WorkSession } from './workSession.type.js';

@Resolver(() => SessionHazard)
export class SessionHazardResolver {
  @FieldResolver(() => Hazard, { description: 'The hazard as it is now.' })
  hazard(@Root() noted: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(noted, info);
  }
}

@Resolver(() => WorkSession)
export class HazardsOfSessionResolver {
  @FieldResolver(() => [SessionHazard], {
    description:
      'Hazards of the item that were not cleared when the timer was started, and whether they were shown.',
  })
  hazardsAtStart(@Root() session: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(session, info);
  }
}
