import { Field, ID, InputType, Int } from 'type-graphql';
import { PartyChoiceInput } from '../parties/partyChoice.inputs.js';
import { EvidenceStanding } from './evidenceStanding.js';
import { ProvenanceEventKind } from './provenanceEventKind.js';

@InputType({ description: 'Something that happened to an item.' })
export class RecordProvenanceEventInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => ProvenanceEventKind, { description: 'What happened.' })
  kind!: ProvenanceEventKind;

  @Field(() => String, {
    nullable: true,
    description: 'When, as EDTF (ISO 8601-2): 1957, 195X, 1957-04~, 1955/1958; null if unknown.',
  })
  dateEdtf?: string | null;

  @Field(() => PartyChoiceInput, { nullable: true, description: 'From whom.' })
  fromParty?: PartyChoiceInput | null;

  @Field(() => PartyChoiceInput, { nullable: true, description: 'To whom, or by whom.' })
  toParty?: PartyChoiceInput | null;

  @Field(() => String, { nullable: true, description: 'Where, in words.' })
  placeName?: string | null;

  @Field(() => EvidenceStanding, {
    defaultValue: EvidenceStanding.CLAIM,
    description: 'What it rests on; more than a claim needs its evidence named.',
  })
  standing!: EvidenceStanding;

  @Field(() => String, {
    nullable: true,
    description: 'The evidence that bears it out or speaks against it: an invoice, a label.',
  })
  evidence?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A change of a provenance event; what is left out stays as it is.' })
export class ChangeProvenanceEventInput {
  @Field(() => ID, { description: 'The event.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => ProvenanceEventKind, { nullable: true, description: 'What happened.' })
  kind?: ProvenanceEventKind;

  @Field(() => String, { nullable: true, description: 'When, as EDTF; null for unknown.' })
  dateEdtf?: string | null;

  @Field(() => PartyChoiceInput, { nullable: true, description: 'From whom; null for unknown.' })
  fromParty?: PartyChoiceInput | null;

  @Field(() => PartyChoiceInput, { nullable: true, description: 'To whom; null for unknown.' })
  toParty?: PartyChoiceInput | null;

  @Field(() => String, { nullable: true, description: 'Where; null for unknown.' })
  placeName?: string | null;

  @Field(() => EvidenceStanding, { nullable: true, description: 'What it rests on.' })
  standing?: EvidenceStanding;

  @Field(() => String, { nullable: true, description: 'The evidence; null for none.' })
  evidence?: string | null;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
