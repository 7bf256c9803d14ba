import type { GraphQLResolveInfo } from 'graphql';
import { GraphQLLocalDate } from 'graphql-scalars';
import { Args, ArgsType, Field, FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { Item } from '../items/item.type.js';
import { Contradiction, Provenance } from './provenance.type.js';
import { ProvenanceEvent, ProvenanceEventConnection } from './provenanceEvent.type.js';

@ArgsType()
export class EventsArgs extends PageArgs {
  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'Only what may have happened on this day or later; undated events are left out.',
  })
  from?: string | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'Only what may have happened on this day or before; undated ones are left out.',
  })
  to?: string | null;
}

@Resolver(() => Item)
export class ProvenanceOfItemResolver {
  @FieldResolver(() => Provenance, { description: 'Where it came from, and on what evidence.' })
  provenance(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}

@Resolver(() => Provenance)
export class ProvenanceResolver {
  @FieldResolver(() => ProvenanceEventConnection, {
    description: 'What happened to it, by the first day that each date allows; undated ones last.',
  })
  events(@Root() group: object, @Args() _args: EventsArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(group, info);
  }

  @FieldResolver(() => [Contradiction], {
    description: 'What in it cannot be; empty when nothing is known to contradict.',
  })
  contradictions(@Root() group: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(group, info);
  }

  @FieldResolver(() => Basis, { description: 'What was compared, and how.' })
  basis(@Root() group: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(group, info);
  }
}

@Resolver(() => Contradiction)
export class ContradictionResolver {
  @FieldResolver(() => [ProvenanceEvent], { description: 'The events that it is about.' })
  events(@Root() contradiction: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(contradiction, info);
  }
}
