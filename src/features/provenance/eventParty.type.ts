import { Field, ID, InputType, Int, ObjectType } from 'type-graphql';
import { Node } from '../../api/kit/node.type.js';
import { PartyChoiceInput } from '../parties/partyChoice.inputs.js';
import { EventPartyRole } from './evidence.words.js';

@ObjectType({
  implements: Node,
  description: 'Somebody had a part in an event, beside those who gave and received.',
  simpleResolvers: true,
})
export class EventParty extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => EventPartyRole, { description: 'What part.' })
  role!: EventPartyRole;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}

@InputType({ description: 'Somebody had a part in an event.' })
export class RecordEventPartyInput {
  @Field(() => ID, { description: 'The event.' })
  eventId!: string;

  @Field(() => PartyChoiceInput, { description: 'Who.' })
  party!: PartyChoiceInput;

  @Field(() => EventPartyRole, { description: 'What part.' })
  role!: EventPartyRole;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A change of the part that somebody had in an event.' })
export class ChangeEventPartyInput {
  @Field(() => ID, { description: 'The part.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => EventPartyRole, { nullable: true, description: 'What part.' })
  role?: EventPartyRole;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
