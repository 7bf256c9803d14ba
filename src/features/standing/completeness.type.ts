import { Field, Float, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';

@ObjectType({
  description: 'What is there of what a complete one has.',
  simpleResolvers: true,
})
export class Completeness {
  @Field(() => Float, {
    nullable: true,
    description:
      'Required positions known to be filled over required positions, 0 to 1; null when the model has no fit-out.',
  })
  share!: number | null;

  @Field(() => Int, { description: 'Positions that a complete one must have filled.' })
  required!: number;

  @Field(() => Int, { description: 'Of those, known to be filled rightly.' })
  present!: number;

  @Field(() => [String], { description: 'Designators of required positions that are empty.' })
  missing!: string[];

  @Field(() => [String], { description: 'Designators of required positions wrongly filled.' })
  wrong!: string[];

  @Field(() => [String], { description: 'Designators of required positions nobody has looked at.' })
  unknown!: string[];

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
