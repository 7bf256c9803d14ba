import type { GraphQLResolveInfo } from 'graphql';
import { Args, FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { Finding } from '../findings/finding.type.js';
import { Item } from '../items/item.type.js';
import { Component } from '../parts/component.type.js';
import { Task } from '../tasks/task.type.js';
import { TreatmentConnection } from './treatment.type.js';

@Resolver(() => Item)
export class TreatmentsOfItemResolver {
  @FieldResolver(() => TreatmentConnection, { description: 'Its treatments, latest first.' })
  treatments(@Root() item: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}

@Resolver(() => Component)
export class TreatmentsOfComponentResolver {
  @FieldResolver(() => TreatmentConnection, { description: 'Its treatments, latest first.' })
  treatments(@Root() component: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(component, info);
  }
}

@Resolver(() => Task)
export class TreatmentsOfTaskResolver {
  @FieldResolver(() => TreatmentConnection, { description: 'Treatments for it, latest first.' })
  treatments(@Root() task: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(task, info);
  }
}

@Resolver(() => Finding)
export class TreatmentsOfFindingResolver {
  @FieldResolver(() => TreatmentConnection, { description: 'Treatments for it, latest first.' })
  treatments(@Root() finding: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(finding, info);
  }
}
