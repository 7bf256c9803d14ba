import type { GraphQLResolveInfo } from 'graphql';
import { Field, FieldResolver, Info, Int, ObjectType, Resolver, Root } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PartType } from '../parts/partType.type.js';

@ObjectType({ description: 'What is on the shelf of one part type.', simpleResolvers: true })
export class StockTotal {
  @Field(() => Int, { description: 'Units on the shelf, over all lots.' })
  onHandQuantity!: number;

  @Field(() => Int, { description: 'Of them, put aside for tasks.' })
  reservedQuantity!: number;

  @Field(() => Int, { description: 'Of them, free.' })
  availableQuantity!: number;

  @Field(() => Basis, { description: 'What was counted.' })
  basis!: Basis;
}

@Resolver(() => PartType)
export class StockOfPartTypeResolver {
  @FieldResolver(() => StockTotal, { description: 'What is on the shelf of it, over all lots.' })
  stock(@Root() partType: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(partType, info);
  }
}
