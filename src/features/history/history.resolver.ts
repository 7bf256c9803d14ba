import type { GraphQLResolveInfo } from 'graphql';
import {
  Arg,
  Args,
  Ctx,
  Field,
  FieldResolver,
  Info,
  Int,
  Mutation,
  ObjectType,
  Resolver,
  Root,
} from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { actOf } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Problem } from '../../api/kit/problem.type.js';
import { Refusal } from '../../db/refusal.js';
import { redactHistory } from './redactHistory.js';
import { RedactHistoryInput } from './redaction.inputs.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { Item } from '../items/item.type.js';
import { Change, ChangeConnection } from './change.type.js';

@Resolver(() => Change)
export class ChangeResolver {
  @FieldResolver(() => [String], { description: 'Names of the fields that changed.' })
  changedFields(@Root() change: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(change, info);
  }
}

@ObjectType({ description: 'What came of `redactHistory`.', simpleResolvers: true })
export class RedactHistoryPayload {
  @Field(() => Int, { description: 'How many entries of the log lost a value.' })
  entries!: number;

  @Field(() => [Problem], {
    description: 'Why nothing was done; empty when it was. All problems at once.',
  })
  problems!: readonly Problem[];
}

@Resolver()
export class RedactionResolver {
  @Mutation(() => RedactHistoryPayload, {
    description:
      'Takes what fields of a record said out of its history, for good; the chain of the log still holds.',
  })
  async redactHistory(
    @Arg('input', () => RedactHistoryInput, { description: 'The record and its fields.' })
    input: RedactHistoryInput,
    @Ctx() context: ApiContext,
  ): Promise<RedactHistoryPayload> {
    const { database, reads } = context;
    try {
      const act = actOf(context, 'redactHistory');
      const entries = await database.write(act, (work) => redactHistory(work, input, reads));
      return { entries, problems: [] };
    } catch (error) {
      if (error instanceof Refusal) return { entries: 0, problems: error.problems };
      throw error;
    }
  }
}

@Resolver(() => Item)
export class ItemHistoryResolver {
  @FieldResolver(() => ChangeConnection, {
    description: "Changes of the item's own data, the latest first.",
  })
  history(@Root() item: object, @Args() _page: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}
