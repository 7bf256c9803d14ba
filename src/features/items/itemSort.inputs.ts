import { GraphQLCurrency } from 'graphql-scalars';
import { Field, InputType } from 'type-graphql';
import { describedEnum } from '../../api/kit/describedEnum.js';

export const SortDirection = describedEnum('SortDirection', 'Which end comes first.', {
  ASC: 'The least, the earliest, A.',
  DESC: 'The most, the latest, Z.',
});
export type SortDirection = keyof typeof SortDirection;

export const ItemSortKey = describedEnum('ItemSortKey', 'What a list of items is ordered by.', {
  INVENTORY_NUMBER: 'Its number, as text.',
  NAME: 'Its name, capitals and small letters alike; items without one count as least.',
  CHANGED: 'When its own data last changed.',
  READINESS: 'How near it is to the air.',
  COMPLETION: 'Completed share; items without tasks count as least.',
  HOURS: 'Hours invested.',
  COST: 'Cost to date in `currency`; items with none in it count as least.',
});
export type ItemSortKey = keyof typeof ItemSortKey;

@InputType({ description: 'The order of a list of items.' })
export class ItemSort {
  @Field(() => ItemSortKey, { description: 'What it is ordered by.' })
  by!: ItemSortKey;

  @Field(() => SortDirection, { defaultValue: 'ASC', description: 'Which end comes first.' })
  direction!: SortDirection;

  @Field(() => GraphQLCurrency, {
    nullable: true,
    description: 'For COST, and needed there: the currency, ISO 4217.',
  })
  currency?: string | null;
}
