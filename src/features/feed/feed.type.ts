import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, ID, ObjectType } from 'type-graphql';
import { RecordChange } from './recordChange.js';

@ObjectType({
  description: 'A record that was written: load it anew if you show it.',
  simpleResolvers: true,
})
export class ChangedRecord {
  @Field(() => ID, { description: 'The record, as `node` takes it.' })
  id!: string;

  @Field(() => String, { description: 'Its type in this schema: Rig, WorkSession, Task.' })
  typeName!: string;

  @Field(() => RecordChange, { description: 'What became of it.' })
  change!: RecordChange;
}

@ObjectType({
  description: 'What one act changed. Acts come in the order in which they took effect.',
  simpleResolvers: true,
})
export class RecordsChanged {
  @Field(() => String, {
    description: 'Where you now stand: send it back as `after` when the connection was lost.',
  })
  cursor!: string;

  @Field(() => Boolean, {
    description:
      'Load everything that you show: too much was changed to be named, or too much was missed.',
  })
  isEverything!: boolean;

  @Field(() => String, {
    nullable: true,
    description: 'What was done: fitComponent, stopTimer; null when events were missed.',
  })
  action!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it was done; null when events were missed.',
  })
  at!: string | null;

  @Field(() => [ChangedRecord], {
    description: 'What was written; empty when `isEverything`.',
  })
  records!: ChangedRecord[];

  @Field(() => [ID], {
    description:
      'Rigs and accessories whose computed figures were computed anew; empty when `isEverything`.',
  })
  itemIds!: string[];
}
