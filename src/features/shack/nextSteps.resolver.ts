import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Int, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { loadedField, loadRelations } from '../../api/kit/loadRelations.js';
import { pageSize } from '../../api/kit/pageArgs.js';
import { Item } from '../items/item.type.js';
import { Rig } from '../items/rig.type.js';
import { nextSteps } from './nextSteps.js';
import { NextStep, NextSteps, RankBy } from './nextSteps.type.js';

@Resolver(() => NextSteps)
export class NextStepsResolver {
  @Query(() => NextSteps, {
    description: 'Which task, repair or purchase brings the most rigs on the air, the best first.',
  })
  async nextSteps(
    @Arg('by', () => RankBy, { defaultValue: RankBy.HOUR, description: 'Per hour or per money.' })
    by: RankBy,
    @Arg('first', () => Int, { defaultValue: 20, description: 'How many at the most, 1 to 100.' })
    first: number,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const answer = await nextSteps(context, by, pageSize(first));
    await loadRelations(context, info, 'NextSteps', [answer]);
    return answer;
  }

  @FieldResolver(() => [NextStep], { description: 'The steps, the best first.' })
  steps(@Root() answer: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(answer, info);
  }
}

@Resolver(() => NextStep)
export class NextStepResolver {
  @FieldResolver(() => Item, {
    description: 'What is worked on; of a purchase, what it is for or like.',
  })
  item(@Root() step: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(step, info);
  }

  @FieldResolver(() => [Rig], { description: 'The rigs that it makes ready, looked at alone.' })
  brings(@Root() step: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(step, info);
  }
}
