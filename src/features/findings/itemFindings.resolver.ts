import type { GraphQLResolveInfo } from 'graphql';
import { Args, FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { Hazard } from '../hazards/hazard.type.js';
import { InspectionConnection } from '../inspections/inspection.type.js';
import { Item } from '../items/item.type.js';
import { FindingsArgs } from './finding.inputs.js';
import { FindingConnection } from './finding.type.js';

/** What has been seen on an item. */
@Resolver(() => Item)
export class ItemFindingsResolver {
  @FieldResolver(() => InspectionConnection, { description: 'Inspections, the latest first.' })
  inspections(@Root() item: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => FindingConnection, { description: 'Findings, the latest seen first.' })
  findings(@Root() item: object, @Args() _args: FindingsArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => [Hazard], { description: 'What can hurt; those not cleared come first.' })
  hazards(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}
