import { Field, ID, InputType } from 'type-graphql';
import { PartyKind } from './partyKind.js';

@InputType({ description: 'Somebody known, by `id`; or somebody new, by `name`. One of the two.' })
export class PartyChoiceInput {
  @Field(() => ID, { nullable: true, description: 'A party that is written down already.' })
  id?: string | null;

  @Field(() => String, { nullable: true, description: 'The name of a new party.' })
  name?: string | null;

  @Field(() => PartyKind, {
    defaultValue: PartyKind.PERSON,
    description: 'What the new party is; of no account for a known one.',
  })
  kind!: PartyKind;
}
