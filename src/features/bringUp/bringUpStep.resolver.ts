import type { GraphQLResolveInfo } from 'graphql';
import { FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Finding } from '../findings/finding.type.js';
import { Party } from '../parties/party.type.js';
import { Reading } from '../readings/reading.type.js';
import { BringUpStep } from './bringUp.type.js';

@Resolver(() => BringUpStep)
export class BringUpStepResolver {
  @FieldResolver(() => [Reading], { description: 'The readings that were taken.' })
  readings(@Root() step: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(step, info);
  }

  @FieldResolver(() => Party, { nullable: true, description: 'Who did it; null if unrecorded.' })
  doneBy(@Root() step: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(step, info);
  }

  @FieldResolver(() => Finding, {
    nullable: true,
    description: 'The finding that this gate opened when it failed; null if none.',
  })
  finding(@Root() step: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(step, info);
  }
}
