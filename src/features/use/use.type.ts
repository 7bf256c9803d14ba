import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Float, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';

@ObjectType({
  implements: Node,
  description: 'A rig was in use on the air, or an accessory served it then.',
  simpleResolvers: true,
})
export class OnAirUse extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => GraphQLDateTimeISO, { description: 'When it began.' })
  startedAt!: string;

  @Field(() => Int, { description: 'How long it lasted, in minutes.' })
  minutes!: number;

  @Field(() => Int, { description: 'Contacts made; 0 for an accessory.' })
  contacts!: number;

  @Field(() => String, { nullable: true, description: 'Wavelength name; null if not recorded.' })
  band!: string | null;

  @Field(() => String, { nullable: true, description: 'Kind of emission; null if not recorded.' })
  mode!: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}

export const OnAirUseConnection = connectionOf('OnAirUse', () => OnAirUse, 'uses on the air');

@ObjectType({ description: 'How much an item has been in use on the air.', simpleResolvers: true })
export class UseSum {
  @Field(() => Float, { description: 'Hours on the air, as far as is recorded.' })
  hours!: number;

  @Field(() => Int, { description: 'Contacts made.' })
  contacts!: number;

  @Field(() => Int, { description: 'How many times it was used.' })
  uses!: number;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When the last use began; null if it never was used, as far as is recorded.',
  })
  lastUsedAt!: string | null;

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}

@ObjectType({
  implements: Node,
  description: 'Something to be done on an item again and again, and how near it is.',
  simpleResolvers: true,
})
export class MaintenanceRule extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: 'What is to be done.' })
  title!: string;

  @Field(() => Float, {
    nullable: true,
    description: 'After so many hours of use; null: use does not matter.',
  })
  everyUseHours!: number | null;

  @Field(() => Int, {
    nullable: true,
    description: 'After so many days of 24 hours; null: the calendar does not matter.',
  })
  everyDays!: number | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it was last done; null if never.',
  })
  lastDoneAt!: string | null;

  @Field(() => Boolean, { description: 'One of its intervals is used up.' })
  isDue!: boolean;

  @Field(() => Float, { description: 'How much of the interval is used up: 1 is due.' })
  share!: number;

  @Field(() => Float, { description: 'Hours of use since it was last done.' })
  usedHours!: number;

  @Field(() => Float, {
    nullable: true,
    description:
      'Hours of use until it is due; below 0 when overdue, null when use does not matter.',
  })
  useHoursLeft!: number | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When the calendar makes it due; null when the calendar does not matter.',
  })
  dueAt!: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Since when it is no longer asked for; null while it is.',
  })
  retiredAt!: string | null;
}

@ObjectType({
  description: 'A rig that is ready, and how long it has been idle.',
  simpleResolvers: true,
})
export class RotationRig {
  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When its last use began; null if it never was used, as far as is recorded.',
  })
  lastUsedAt!: string | null;

  @Field(() => Int, { nullable: true, description: 'Whole days since then; null if never used.' })
  idleDays!: number | null;
}
