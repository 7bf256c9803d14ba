import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { loadedField, loadRelations } from '../../api/kit/loadRelations.js';
import { Item } from '../items/item.type.js';
import { InsuranceSchedule, InsuredItem } from './insurance.type.js';
import { insuranceSchedule } from './insuranceSchedule.js';

@Resolver(() => InsuranceSchedule)
export class InsuranceResolver {
  @Query(() => InsuranceSchedule, {
    complexity: ({ childComplexity }) => 2000 + childComplexity,
    description: 'The insurance schedule of the whole collection, or of a part of it.',
  })
  async insuranceSchedule(
    @Arg('inventoryNumbers', () => [String], {
      nullable: true,
      description: 'Only these items; all in hand or lent if left out.',
    })
    inventoryNumbers: string[] | null | undefined,
    @Arg('placeName', () => String, {
      nullable: true,
      description: 'Only what stands in this place, or in a place within it.',
    })
    placeName: string | null | undefined,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const of = { numbers: inventoryNumbers ?? null, placeName: placeName ?? null };
    const row = await insuranceSchedule(context, of);
    await loadRelations(context, info, 'InsuranceSchedule', [row]);
    return row;
  }

  @FieldResolver(() => [InsuredItem], { description: 'The items, by inventory number.' })
  items(@Root() schedule: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(schedule, info);
  }
}

@Resolver(() => InsuredItem)
export class InsuredItemResolver {
  @FieldResolver(() => Item, { description: 'The rig or accessory.' })
  item(@Root() insured: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(insured, info);
  }
}
