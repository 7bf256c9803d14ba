import { Field, Float, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { DecimalScalar } from '../../api/kit/scalars.js';

@ObjectType({ description: 'A value that is replaced.', simpleResolvers: true })
export class ReplacedValue {
  @Field(() => Float, { description: 'As the set was made, in microfarads.' })
  microfarads!: number;

  @Field(() => Float, { description: 'How far the ordered value lies off, in percent of it.' })
  differencePercent!: number;
}

@ObjectType({ description: 'One line of an order of capacitors.', simpleResolvers: true })
export class ReplacementLine {
  @Field(() => DecimalScalar, { description: 'A value that is made, in microfarads.' })
  microfarads!: string;

  @Field(() => Float, {
    nullable: true,
    description: "Volts, not less than the originals'; null: read it on the parts first.",
  })
  workingVoltsAtLeast!: number | null;

  @Field(() => [String], { description: 'Where they go: C1, C2.' })
  designators!: string[];

  @Field(() => [ReplacedValue], { description: 'What is replaced.' })
  originals!: ReplacedValue[];

  @Field(() => [DecimalScalar], { description: 'Other values that would serve, in microfarads.' })
  alternatives!: string[];

  @Field(() => Int, { description: 'How many are needed.' })
  quantity!: number;

  @Field(() => Int, { description: 'How many more to have at hand.' })
  spares!: number;

  @Field(() => Int, { description: 'Ordered for these places and on its way.' })
  onOrder!: number;

  @Field(() => [String], {
    description: 'How it is on its way: when ordered, where from, when expected; empty if not.',
  })
  ordered!: string[];

  @Field(() => Int, { description: 'Still to be ordered: needed and spares, less on its way.' })
  toOrder!: number;
}

@ObjectType({
  description:
    'Capacitors of an item as an order. Discharge and measure before you touch one: a capacitor holds its charge.',
  simpleResolvers: true,
})
export class ReplacementList {
  @Field(() => [ReplacementLine], { description: 'By value, then by voltage.' })
  lines!: ReplacementLine[];

  @Field(() => [String], { description: 'Places whose capacitance is not written down.' })
  unknown!: string[];

  @Field(() => String, {
    description: 'The order as CSV (RFC 4180), no cell of which a spreadsheet takes for a formula.',
  })
  csv!: string;

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
