import type { GraphQLResolveInfo } from 'graphql';
import { Field, FieldResolver, Info, Int, ObjectType, Resolver, Root } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { Item } from '../items/item.type.js';
import { Project } from '../projects/project.type.js';

@ObjectType({
  description: 'What spares from the shelf cost that went into an item or a project.',
  simpleResolvers: true,
})
export class FittedSpares {
  @Field(() => [MoneyAmount], { description: 'A currency each; nothing is converted.' })
  amounts!: MoneyAmount[];

  @Field(() => Int, { description: 'Units that left the shelf for it.' })
  unitCount!: number;

  @Field(() => Int, { description: 'Of them, those whose lot has no cost: in no amount.' })
  uncostedUnitCount!: number;

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}

@Resolver(() => Item)
export class FittedSparesOfItemResolver {
  @FieldResolver(() => FittedSpares, {
    description: 'What the spares cost that went into it; beside the cost to date, not in it.',
  })
  fittedSpares(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}

@Resolver(() => Project)
export class FittedSparesOfProjectResolver {
  @FieldResolver(() => FittedSpares, {
    description: 'What the spares of its tasks cost; beside the cost to date, not in it.',
  })
  fittedSpares(@Root() project: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(project, info);
  }
}
