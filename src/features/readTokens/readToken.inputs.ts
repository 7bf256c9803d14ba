import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { TokenAllowance } from './tokenAllowance.js';
import { TokenScope } from './tokenScope.js';

@InputType({ description: 'A token for one program that reads.' })
export class MakeReadTokenInput {
  @Field(() => String, { description: 'For whom or what: screen in the club room.' })
  name!: string;

  @Field(() => [TokenScope], { description: 'The ways out that it opens; one is best.' })
  scopes!: TokenScope[];

  @Field(() => [TokenAllowance], {
    nullable: true,
    description: 'What may go out with the rest; nothing of it if left out.',
  })
  shows?: TokenAllowance[] | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The last day, in UTC, on which it opens anything; until taken back if left out.',
  })
  lastDay?: string | null;
}

@InputType({ description: 'A token that is to open nothing any more.' })
export class TakeBackReadTokenInput {
  @Field(() => ID, { description: 'The token.' })
  tokenId!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;
}
