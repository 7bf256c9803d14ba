import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { MoneyInput } from '../../api/kit/money.type.js';

@InputType({
  description:
    'A purchase made on the spot. Two touches do: the want, and the price. It can be written down without a connection and sent later, and more than once.',
})
export class RecordFindInput {
  @Field(() => String, {
    description:
      'Your own name for this purchase, up to 100 characters, unique. The same key with the same content gives the same answer; with other content it is refused.',
  })
  key!: string;

  @Field(() => ID, { nullable: true, description: 'What was wanted.' })
  wantId?: string | null;

  @Field(() => ID, {
    nullable: true,
    description: 'The part type bought; left out: that of the want. A substitute goes here.',
  })
  partTypeId?: string | null;

  @Field(() => String, { nullable: true, description: 'What was bought, in words.' })
  description?: string | null;

  @Field(() => Int, { defaultValue: 1, description: 'How many, from 1.' })
  quantity!: number;

  @Field(() => MoneyInput, { description: 'The price of all of them.' })
  price!: MoneyInput;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'Which day; left out: today, UTC.',
  })
  foundOn?: string | null;

  @Field(() => String, { nullable: true, description: 'The fair or shop, in words.' })
  venue?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}
