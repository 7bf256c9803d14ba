import { ArgsType, Field } from 'type-graphql';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { ItemFilter } from './itemFilter.inputs.js';
import { ItemSort } from './itemSort.inputs.js';

@ArgsType()
export class ItemListArgs extends PageArgs {
  @Field(() => ItemFilter, {
    defaultValue: { isRetired: false },
    description: 'Which items; left out: all that are in the collection.',
  })
  filter!: ItemFilter;

  @Field(() => ItemSort, {
    nullable: true,
    description: 'The order; left out: by inventory number.',
  })
  sort?: ItemSort | null;
}
