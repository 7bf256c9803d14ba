import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { Zone } from '../inspections/zone.js';
import { FindingSeverity } from './findingSeverity.js';
import { FindingStatus } from './findingStatus.js';

@ObjectType({
  implements: Node,
  description: 'Something seen at an inspection, or at the bench.',
  simpleResolvers: true,
})
export class Finding extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => Zone, { description: 'Where it was seen.' })
  zone!: Zone;

  @Field(() => FindingSeverity, { description: 'How much it matters.' })
  severity!: FindingSeverity;

  @Field(() => String, { description: 'What was seen.' })
  note!: string;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was seen.' })
  seenAt!: string;

  @Field(() => FindingStatus, { description: 'What has become of it.' })
  status!: FindingStatus;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it was accepted or resolved; null while it is open.',
  })
  settledAt!: string | null;

  @Field(() => String, {
    nullable: true,
    description: 'How it was put right, or why it stays; null while it is open.',
  })
  settledNote!: string | null;
}

export const FindingConnection = connectionOf('Finding', () => Finding, 'findings');
