import type { GraphQLResolveInfo } from 'graphql';
import { FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Collection } from '../collection/collection.type.js';
import { Item } from '../items/item.type.js';
import { Project } from '../projects/project.type.js';
import { CollectionCompleteness } from './collectionCompleteness.type.js';
import { Completeness } from './completeness.type.js';
import { Completion } from './completion.type.js';
import { CostToDate } from './costToDate.type.js';
import { HoursInvested } from './hoursInvested.type.js';
import { ReadinessCount } from './readinessCount.type.js';
import { Readiness } from './readiness.type.js';
import { RemainingWork } from './remainingWork.type.js';

/** The computed fields of rigs and accessories. */
@Resolver(() => Item)
export class ItemStandingResolver {
  @FieldResolver(() => HoursInvested, { description: 'Time at the bench so far.' })
  hours(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => Completion, { description: 'What is done of what was planned.' })
  completion(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => RemainingWork, { description: 'Hours of work left.' })
  remaining(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => Completeness, { description: 'What is there of what a complete one has.' })
  completeness(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => CostToDate, { description: 'Money spent on it so far.' })
  cost(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => Readiness, {
    description: 'May it go on the air? For an accessory: may it serve?',
  })
  readiness(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}

/** The computed fields of a project; completeness and readiness are those of its item. */
@Resolver(() => Project)
export class ProjectStandingResolver {
  @FieldResolver(() => HoursInvested, { description: 'Time spent on its tasks so far.' })
  hours(@Root() project: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(project, info);
  }

  @FieldResolver(() => Completion, { description: 'What is done of what was planned.' })
  completion(@Root() project: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(project, info);
  }

  @FieldResolver(() => RemainingWork, { description: 'Hours of work left.' })
  remaining(@Root() project: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(project, info);
  }

  @FieldResolver(() => CostToDate, { description: 'Money spent on it so far.' })
  cost(@Root() project: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(project, info);
  }
}

/** The computed figures of the collection as a whole. */
@Resolver(() => Collection)
export class CollectionStandingResolver {
  @FieldResolver(() => HoursInvested, { description: 'Time at the bench so far.' })
  hours(@Root() collection: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(collection, info);
  }

  @FieldResolver(() => Completion, { description: 'What is done of what was planned.' })
  completion(@Root() collection: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(collection, info);
  }

  @FieldResolver(() => RemainingWork, { description: 'Hours of work left.' })
  remaining(@Root() collection: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(collection, info);
  }

  @FieldResolver(() => CollectionCompleteness, {
    description: 'What is there of what complete ones would have.',
  })
  completeness(@Root() collection: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(collection, info);
  }

  @FieldResolver(() => CostToDate, { description: 'Money spent so far.' })
  cost(@Root() collection: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(collection, info);
  }

  @FieldResolver(() => ReadinessCount, { description: 'How many rigs are how far from the air.' })
  readiness(@Root() collection: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(collection, info);
  }
}
