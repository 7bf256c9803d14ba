import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { DisposalKind, LoanDirection, LossKind, Whereabouts } from './lossKind.js';

const day = (description: string): PropertyDecorator =>
  Field(() => GraphQLLocalDate, { nullable: true, description });
const words = (description: string): PropertyDecorator =>
  Field(() => String, { nullable: true, description: `${description}; null if not recorded.` });

@ObjectType({
  implements: Node,
  description: 'An item is lent to or by somebody for a time.',
  simpleResolvers: true,
})
export class Loan extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => LoanDirection, { description: 'Which way it is lent.' })
  direction!: LoanDirection;

  @Field(() => GraphQLLocalDate, { description: 'The day it went, or came to us.' })
  lentOn!: string;

  @day('The day by which it is to be back; null until further notice.')
  dueOn!: string | null;

  @day('The day it came or went back; null while the loan lasts.')
  returnedOn!: string | null;

  @words('Where it is')
  placeName!: string | null;

  @words('What for')
  purpose!: string | null;

  @words('Remarks')
  note!: string | null;
}

@ObjectType({
  implements: Node,
  description: 'An item was stolen or cannot be found.',
  simpleResolvers: true,
})
export class ItemLoss extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => LossKind, { description: 'How it went missing.' })
  kind!: LossKind;

  @Field(() => GraphQLLocalDate, { description: 'The day it was missed.' })
  missedOn!: string;

  @day('The day it was found; null while it is missing.')
  foundOn!: string | null;

  @words('What is known of how it happened')
  circumstances!: string | null;

  @words('To whom it was reported')
  reportedTo!: string | null;

  @words('The number that the report was given')
  reportNumber!: string | null;

  @words('Remarks')
  note!: string | null;
}

@ObjectType({ description: 'One item of a lot that went out.', simpleResolvers: true })
export class DisposalLine {}

@ObjectType({ description: 'What it cost to part with a lot.', simpleResolvers: true })
export class DisposalCost {
  @Field(() => String, { description: 'What it was for.' })
  description!: string;
}

@ObjectType({
  implements: Node,
  description: 'A lot that went out for good: one item or several at one price.',
  simpleResolvers: true,
})
export class Disposal extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => DisposalKind, { description: 'How it went.' })
  kind!: DisposalKind;

  @Field(() => GraphQLLocalDate, { description: 'The day it went.' })
  disposedOn!: string;

  @words('The fair, auction or house')
  venue!: string | null;

  @words('Remarks')
  note!: string | null;
}

export const DisposalConnection = connectionOf('Disposal', () => Disposal, 'disposals');
export const LoanConnection = connectionOf('Loan', () => Loan, 'loans');
export const ItemLossConnection = connectionOf('ItemLoss', () => ItemLoss, 'losses');

@ObjectType({
  description: 'Whether an item is at hand, and if not where it is and until when.',
  simpleResolvers: true,
})
export class ItemWhereabouts {
  @Field(() => Whereabouts, { description: 'At hand or not.' })
  state!: Whereabouts;

  @day('Since when it is out of hand; null while it is at hand.')
  since!: string | null;

  @day('Until when; null if until further notice, or while it is at hand.')
  dueOn!: string | null;

  @Field(() => Int, {
    description: 'Days since it was due back, counted in UTC; 0 while nothing is overdue.',
  })
  overdueDays!: number;

  @words('Where it is, in words')
  placeName!: string | null;
}
