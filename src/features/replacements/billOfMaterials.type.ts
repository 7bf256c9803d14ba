import { Field, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';

@ObjectType({ description: 'One part that an item needs.', simpleResolvers: true })
export class BillLine {
  @Field(() => String, { description: 'What it is: a designation, or words from the wanted list.' })
  name!: string;

  @Field(() => [String], { description: 'Places that lack it: V3, C12; empty when none is known.' })
  designators!: string[];

  @Field(() => Int, { description: 'Needed: the largest of places, tasks and wants.' })
  needed!: number;

  @Field(() => Int, { description: 'Of them, by its open tasks.' })
  forTasks!: number;

  @Field(() => Int, { description: 'Spares to have at hand beyond the need.' })
  spares!: number;

  @Field(() => Int, { description: 'Free on the shelf.' })
  inStock!: number;

  @Field(() => Int, { description: 'On the shelf, put aside for tasks of this item.' })
  putAside!: number;

  @Field(() => Int, { description: 'Still open on the wanted list for this item.' })
  wanted!: number;

  @Field(() => Int, { description: 'Ordered for this item and on its way.' })
  onOrder!: number;

  @Field(() => Int, {
    description: 'To be ordered: needed and spares, less what is there or on its way.',
  })
  toOrder!: number;
}

@ObjectType({
  description: 'Everything that an item needs: what it lacks, what its tasks and wants ask for.',
  simpleResolvers: true,
})
export class BillOfMaterials {
  @Field(() => [String], {
    description: 'Places that lack a part of which nobody says what it is.',
  })
  unknown!: string[];

  @Field(() => String, {
    description: 'The bill as CSV (RFC 4180), no cell of which a spreadsheet takes for a formula.',
  })
  csv!: string;

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
