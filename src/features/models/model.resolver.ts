import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { equalTo, retiredIs } from '../../api/kit/conditions.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { containsWords } from '../../db/containsWords.js';
import { ItemConnection } from '../items/item.type.js';
import { Limit } from '../readings/limit.type.js';
import { FitOutPositionConnection } from './fitOutPosition.type.js';
import { ModelFilter } from './model.inputs.js';
import { modelReads } from './model.reads.js';
import { Model, ModelConnection } from './model.type.js';
import { ModelCapability, ModelRole } from './modelDetail.type.js';

const searched = ['model.maker', 'model.designation', 'model.description'];

@Resolver(() => Model)
export class ModelResolver {
  @Query(() => ModelConnection, { description: 'Models by maker and designation.' })
  models(
    @Args() args: PageArgs,
    @Arg('filter', () => ModelFilter, { defaultValue: { isRetired: false }, description: 'Which.' })
    filter: ModelFilter,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return rootPage(context, info, args, {
      ...modelReads,
      from: modelReads.table,
      sortBy: `model.maker || ' ' || model.designation`,
      where: [
        ...containsWords(searched, filter.text ?? ''),
        ...equalTo('model.item_kind', filter.itemKind),
        ...retiredIs('model', filter.isRetired),
      ],
    });
  }

  @FieldResolver(() => [ModelCapability], { description: 'Bands and modes, as made.' })
  capabilities(@Root() model: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(model, info);
  }

  @FieldResolver(() => [ModelRole], { description: 'Accessory roles that it works with.' })
  roles(@Root() model: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(model, info);
  }

  @FieldResolver(() => FitOutPositionConnection, {
    description: 'What a complete one has, in the order of checking off.',
  })
  fitOut(@Root() model: object, @Args() _page: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(model, info);
  }

  @FieldResolver(() => [Limit], { description: 'What readings of such a set are held against.' })
  limits(@Root() model: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(model, info);
  }

  @FieldResolver(() => ItemConnection, {
    description: 'Those of this model that are in the collection, by inventory number.',
  })
  items(@Root() model: object, @Args() _page: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(model, info);
  }
}
