import { Field, ID, InputType, Int } from 'type-graphql';
import { PartyKind } from './partyKind.js';

@InputType({ description: 'A new person or organisation.' })
export class CreatePartyInput {
  @Field(() => PartyKind, { defaultValue: 'PERSON', description: 'A person or an organisation.' })
  kind!: PartyKind;

  @Field(() => String, { description: 'Its name.' })
  name!: string;

  @Field(() => String, {
    nullable: true,
    description: 'How to reach it: address, telephone, call sign.',
  })
  contact?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A change of a person or organisation; what is left out stays.' })
export class ChangePartyInput {
  @Field(() => ID, { description: 'The party.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => PartyKind, { nullable: true, description: 'A person or an organisation.' })
  kind?: PartyKind;

  @Field(() => String, { nullable: true, description: 'New name.' })
  name?: string;

  @Field(() => String, { nullable: true, description: 'How to reach it; null for not recorded.' })
  contact?: string | null;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;

  @Field(() => Boolean, { nullable: true, description: 'Take it out of lists, or back in.' })
  isRetired?: boolean;
}

@InputType({ description: 'Which people and organisations to list.' })
export class PartyFilter {
  @Field(() => String, { nullable: true, description: 'Words in the name or the contact.' })
  text?: string | null;

  @Field(() => PartyKind, { nullable: true, description: 'Only this kind.' })
  kind?: PartyKind | null;

  @Field(() => Boolean, {
    nullable: true,
    defaultValue: false,
    description: 'True: only those taken out of lists; null: those too.',
  })
  isRetired?: boolean | null;
}
