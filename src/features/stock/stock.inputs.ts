import { GraphQLDateTimeISO, GraphQLLocalDate } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { MoneyInput } from '../../api/kit/money.type.js';
import { DrawReason } from './drawReason.js';
import { StockCondition } from './stockCondition.js';

@InputType({ description: 'Spares that came to the shelf together.' })
export class AddStockInput {
  @Field(() => ID, { nullable: true, description: 'Their part type.' })
  partTypeId?: string | null;

  @Field(() => String, { nullable: true, description: 'Or what they are, in words.' })
  description?: string | null;

  @Field(() => Int, { description: 'How many came, from 1.' })
  quantity!: number;

  @Field(() => ID, { nullable: true, description: 'Where they lie.' })
  placeId?: string | null;

  @Field(() => StockCondition, {
    defaultValue: StockCondition.UNKNOWN,
    description: 'What shape they are in.',
  })
  condition!: StockCondition;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day they came; left out: today in UTC.',
  })
  receivedOn?: string | null;

  @Field(() => MoneyInput, {
    nullable: true,
    description: 'What all of them cost; left out: not known.',
  })
  cost?: MoneyInput | null;

  @Field(() => ID, {
    nullable: true,
    description:
      'The line of the acquisition they came with: what falls to it is what they cost. Leave `cost` out then.',
  })
  lotLineId?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A correction of a lot of spares; what is left out stays as it is.' })
export class ChangeStockLotInput {
  @Field(() => ID, { description: 'The lot.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => ID, { nullable: true, description: 'Their part type; null if not known.' })
  partTypeId?: string | null;

  @Field(() => String, { nullable: true, description: 'What they are, in words; null for none.' })
  description?: string | null;

  @Field(() => Int, {
    nullable: true,
    description: 'How many came; no fewer than have left it and are put aside.',
  })
  quantity?: number;

  @Field(() => ID, { nullable: true, description: 'Where they lie; null for unknown.' })
  placeId?: string | null;

  @Field(() => StockCondition, { nullable: true, description: 'What shape they are in.' })
  condition?: StockCondition;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'The day they came.' })
  receivedOn?: string;

  @Field(() => MoneyInput, { nullable: true, description: 'What all cost; null for not known.' })
  cost?: MoneyInput | null;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}

@InputType({ description: 'Spares put aside for a task: of a part type, or from one lot.' })
export class ReserveStockInput {
  @Field(() => ID, { description: 'The task.' })
  taskId!: string;

  @Field(() => ID, { nullable: true, description: 'Of this part type, the oldest lots first.' })
  partTypeId?: string | null;

  @Field(() => ID, { nullable: true, description: 'Or from this lot.' })
  lotId?: string | null;

  @Field(() => Int, { description: 'How many, from 1.' })
  quantity!: number;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A correction of a reservation; what is left out stays as it is.' })
export class ChangeReservationInput {
  @Field(() => ID, { description: 'The reservation.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => Int, { nullable: true, description: 'How many; no fewer than were drawn from it.' })
  quantity?: number;

  @Field(() => Boolean, {
    nullable: true,
    description: 'True: what was not drawn is free again; false: put aside once more.',
  })
  isReleased?: boolean;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}

@InputType({
  description: 'Spares leave the shelf without being fitted; to fit one use `fitComponent`.',
})
export class DrawStockInput {
  @Field(() => ID, { nullable: true, description: 'Of this part type, the oldest lots first.' })
  partTypeId?: string | null;

  @Field(() => ID, { nullable: true, description: 'Or from this lot.' })
  lotId?: string | null;

  @Field(() => Int, { description: 'How many, from 1.' })
  quantity!: number;

  @Field(() => DrawReason, { description: 'Why; not FITTED.' })
  reason!: DrawReason;

  @Field(() => ID, {
    nullable: true,
    description: 'The task that uses them: what it has put aside is taken first.',
  })
  taskId?: string | null;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; now if left out.' })
  drawnAt?: Date | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A correction of a draw; what is left out stays as it is.' })
export class ChangeStockDrawInput {
  @Field(() => ID, { description: 'The draw.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => Int, { nullable: true, description: 'How many; 0: it did not happen.' })
  quantity?: number;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}

@InputType({ description: 'Which lots of spares to list.' })
export class StockFilter {
  @Field(() => ID, { nullable: true, description: 'Only of this part type.' })
  partTypeId?: string | null;

  @Field(() => ID, { nullable: true, description: 'Only what lies here.' })
  placeId?: string | null;

  @Field(() => String, { nullable: true, description: 'Words in the designation or description.' })
  text?: string | null;

  @Field(() => Boolean, {
    nullable: true,
    defaultValue: false,
    description: 'False: only lots with something left; true: only empty ones; null: both.',
  })
  isEmpty?: boolean | null;
}
