import type { GraphQLResolveInfo } from 'graphql';
import { FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Task } from '../tasks/task.type.js';
import { TaskRemaining } from './taskRemaining.type.js';

/** A table of quantiles for each task. */
const priceOfTable = 50;

@Resolver(() => Task)
export class RemainingOfTaskResolver {
  @FieldResolver(() => TaskRemaining, {
    description: 'Hours left on it, given those already spent and the history of such tasks.',
    complexity: ({ childComplexity }) => priceOfTable + childComplexity,
  })
  remaining(@Root() task: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(task, info);
  }
}
