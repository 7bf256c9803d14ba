import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, ID, Info, Mutation, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField, loadRelations } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Party } from '../parties/party.type.js';
import { ChangeAwayInput, DeclareAwayInput } from './away.inputs.js';
import { changeAway } from './changeAway.js';
import { declareAway } from './declareAway.js';
import { shownPace } from './pace.reads.js';
import { Away, Pace } from './pace.type.js';
import { paceOfPerson } from './paceOfPerson.js';
import { personAsked } from './personAsked.js';

const asAway = { field: 'away', typeName: 'Away' };
const DeclareAwayPayload = payloadOf('declareAway', 'away', () => Away, 'The days away.');
const ChangeAwayPayload = payloadOf('changeAway', 'away', () => Away, 'The days away as they are.');
const priceOfPace = 500;

@Resolver(() => Pace)
export class PaceResolver {
  @Query(() => Pace, {
    description: 'Hours a week as a person really kept them.',
    complexity: ({ childComplexity }) => priceOfPace + 10 * childComplexity,
  })
  async pace(
    @Arg('personId', () => ID, {
      nullable: true,
      description: 'The person; left out: the owner of the collection.',
    })
    personId: string | null | undefined,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const id = await personAsked(context, personId);
    const row = shownPace(
      id,
      await paceOfPerson(context.database.reader, id, context.nowMs),
      context,
    );
    await loadRelations(context, info, 'Pace', [row]);
    return row;
  }

  @FieldResolver(() => Party, { nullable: true, description: 'The person; null if not there.' })
  person(@Root() pace: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(pace, info);
  }

  @FieldResolver(() => [Away], { description: 'Days declared away that hold, by their first.' })
  away(@Root() pace: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(pace, info);
  }
}

@Resolver(() => Away)
export class AwayResolver {
  @FieldResolver(() => Party, { description: 'Who is away.' })
  person(@Root() away: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(away, info);
  }

  @Mutation(() => DeclareAwayPayload, {
    description: 'Declares days away from the bench, once or every year.',
  })
  declareAway(
    @Arg('input', () => DeclareAwayInput, { description: 'The days.' }) input: DeclareAwayInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asAway, (work) => declareAway(work, input));
  }

  @Mutation(() => ChangeAwayPayload, { description: 'Changes days away, or takes them back.' })
  changeAway(
    @Arg('input', () => ChangeAwayInput, { description: 'The change.' }) input: ChangeAwayInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asAway, (work) => changeAway(work, input));
  }
}
