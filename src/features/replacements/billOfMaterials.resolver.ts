import type { GraphQLResolveInfo } from 'graphql';
import { Arg, FieldResolver, Info, Int, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Item } from '../items/item.type.js';
import { PartOrder } from '../orders/partOrder.type.js';
import { PartType } from '../parts/partType.type.js';
import { BillLine, BillOfMaterials } from './billOfMaterials.type.js';

@Resolver(() => Item)
export class BillOfItemResolver {
  @FieldResolver(() => BillOfMaterials, {
    description: 'Everything that it needs, with what is on the shelf and what is to be ordered.',
  })
  billOfMaterials(
    @Root() item: object,
    @Info() info: GraphQLResolveInfo,
    @Arg('spares', () => Int, { defaultValue: 0, description: 'Spares a line, 0 to 100.' })
    _spares: number,
    @Arg('withCapacitors', () => Boolean, {
      defaultValue: false,
      description: 'Every capacitor of the fit-out too, as when all of them are replaced.',
    })
    _withCapacitors: boolean,
  ) {
    return loadedField(item, info);
  }
}

@Resolver(() => BillOfMaterials)
export class BillOfMaterialsResolver {
  @FieldResolver(() => [BillLine], { description: 'A line a part, by name.' })
  lines(@Root() bill: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(bill, info);
  }
}

@Resolver(() => BillLine)
export class BillLineResolver {
  @FieldResolver(() => PartType, { nullable: true, description: 'The part type; or null.' })
  partType(@Root() line: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(line, info);
  }

  @FieldResolver(() => [PartOrder], { description: 'What is on its way, the oldest order first.' })
  orders(@Root() line: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(line, info);
  }
}
