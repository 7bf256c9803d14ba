import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { makeReadToken } from './makeReadToken.js';
import { MakeReadTokenInput, TakeBackReadTokenInput } from './readToken.inputs.js';
import { readTokenColumns } from './readToken.reads.js';
import { MakeReadTokenPayload, ReadToken, ReadTokenConnection } from './readToken.type.js';
import { takeBackReadToken } from './takeBackReadToken.js';
import { TokenAllowance } from './tokenAllowance.js';
import { TokenScope } from './tokenScope.js';

const TakeBackReadTokenPayload = payloadOf(
  'takeBackReadToken',
  'readToken',
  () => ReadToken,
  'The token as it stands now.',
);

const asToken = { field: 'readToken', typeName: 'ReadToken' };

@Resolver(() => ReadToken)
export class ReadTokenResolver {
  @Query(() => ReadTokenConnection, {
    description: 'Tokens that open ways out, the latest first; those taken back too.',
  })
  readTokens(@Args() page: PageArgs, @Ctx() context: ApiContext, @Info() info: GraphQLResolveInfo) {
    return rootPage(context, info, page, {
      typeName: 'ReadToken',
      from: 'read_token',
      table: 'read_token',
      columns: readTokenColumns,
      sortBy: 'read_token.recorded_at',
      direction: 'DESC',
    });
  }

  @FieldResolver(() => [TokenScope], { description: 'The ways out that it opens.' })
  scopes(@Root() { scopes }: { scopes: string }): TokenScope[] {
    return JSON.parse(scopes) as TokenScope[];
  }

  @FieldResolver(() => [TokenAllowance], {
    description: 'What may go out with the rest; empty: none of it.',
  })
  shows(@Root() { shows }: { shows: string }): TokenAllowance[] {
    return JSON.parse(shows) as TokenAllowance[];
  }

  @Mutation(() => MakeReadTokenPayload, {
    description:
      'Makes a token for one program that reads. The answer shows it once; only its digest is kept.',
  })
  async makeReadToken(
    @Arg('input', () => MakeReadTokenInput, { description: 'What it is to open and to show.' })
    input: MakeReadTokenInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    let token: string | null = null;
    const payload = await carryOut(context, info, asToken, async (work) => {
      const made = await makeReadToken(work, input);
      token = made.text;
      return made.id;
    });
    return { ...payload, token: payload['readToken'] === null ? null : token };
  }

  @Mutation(() => TakeBackReadTokenPayload, {
    description: 'Takes a token back: from the next request on it opens nothing.',
  })
  takeBackReadToken(
    @Arg('input', () => TakeBackReadTokenInput, { description: 'The token.' })
    input: TakeBackReadTokenInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asToken, (work) => takeBackReadToken(work, input));
  }
}
