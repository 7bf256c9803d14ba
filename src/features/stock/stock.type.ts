import { GraphQLDateTimeISO, GraphQLLocalDate } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { Node } from '../../api/kit/node.type.js';
import { DrawReason } from './drawReason.js';
import { StockCondition } from './stockCondition.js';

@ObjectType({ description: 'What spares cost, and how that came about.', simpleResolvers: true })
export class StockCost {
  @Field(() => [MoneyAmount], { description: 'One amount a currency; nothing is converted.' })
  amounts!: MoneyAmount[];

  @Field(() => Basis, { description: 'How it came about.' })
  basis!: Basis;
}

@ObjectType({
  implements: Node,
  description:
    'Spares that came to the shelf together. What is left of them is computed from what left.',
  simpleResolvers: true,
})
export class StockLot extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, {
    nullable: true,
    description: 'What they are, in words; null where only the part type says so.',
  })
  description!: string | null;

  @Field(() => StockCondition, { description: 'What shape they are in.' })
  condition!: StockCondition;

  @Field(() => Int, { description: 'How many came.' })
  quantity!: number;

  @Field(() => Int, { description: 'How many have left.' })
  drawnQuantity!: number;

  @Field(() => Int, { description: 'How many lie on the shelf: those that came less those gone.' })
  onHandQuantity!: number;

  @Field(() => Int, { description: 'How many of those on the shelf are put aside for tasks.' })
  reservedQuantity!: number;

  @Field(() => Int, { description: 'How many of those on the shelf anybody may take.' })
  availableQuantity!: number;

  @Field(() => GraphQLLocalDate, { description: 'The day they came; the oldest are used first.' })
  receivedOn!: string;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}

export const StockLotConnection = connectionOf('StockLot', () => StockLot, 'lots of spares');

@ObjectType({
  implements: Node,
  description: 'Units of a lot that are put aside for a task, until they are drawn or released.',
  simpleResolvers: true,
})
export class StockReservation extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => Int, { description: 'How many were put aside.' })
  quantity!: number;

  @Field(() => Int, { description: 'How many are put aside still: neither drawn nor released.' })
  openQuantity!: number;

  @Field(() => GraphQLDateTimeISO, { description: 'When they were put aside.' })
  reservedAt!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When what was not drawn became free again; null while it is put aside.',
  })
  releasedAt!: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}

@ObjectType({
  implements: Node,
  description: 'Units that left a lot, and why.',
  simpleResolvers: true,
})
export class StockDraw extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => Int, { description: 'How many; 0 after a correction: it did not happen.' })
  quantity!: number;

  @Field(() => DrawReason, { description: 'Why they left.' })
  reason!: DrawReason;

  @Field(() => GraphQLDateTimeISO, { description: 'When they left.' })
  drawnAt!: string;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}
