import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { EvidenceStanding } from './evidenceStanding.js';
import { ProvenanceEventKind } from './provenanceEventKind.js';

@ObjectType({
  implements: Node,
  description: 'Something that happened to an item, at a date as uncertain as it is.',
  simpleResolvers: true,
})
export class ProvenanceEvent extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => ProvenanceEventKind, { description: 'What happened.' })
  kind!: ProvenanceEventKind;

  @Field(() => String, {
    nullable: true,
    description: 'When, as written: EDTF (ISO 8601-2); null if unknown.',
  })
  dateEdtf!: string | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description:
      'First day that the date allows, computed; null if it is open. About and uncertain (~ ? %) ' +
      'widen it by one year, month or day, as precise as the date is.',
  })
  earliestOn!: string | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'Last day that the date allows, computed as the first; null if it is open.',
  })
  latestOn!: string | null;

  @Field(() => String, { nullable: true, description: 'Where, in words; null if unknown.' })
  placeName!: string | null;

  @Field(() => EvidenceStanding, { description: 'What it rests on.' })
  standing!: EvidenceStanding;

  @Field(() => String, { nullable: true, description: 'The evidence; null if none.' })
  evidence!: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}

export const ProvenanceEventConnection = connectionOf(
  'ProvenanceEvent',
  () => ProvenanceEvent,
  'provenance events',
);
