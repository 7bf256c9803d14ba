import { Field, ID, InputType, Int } from 'type-graphql';

@InputType({ description: 'Something written by mistake is taken away; the history keeps it.' })
export class RemovalInput {
  @Field(() => ID, { description: 'What is taken away.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;
}
