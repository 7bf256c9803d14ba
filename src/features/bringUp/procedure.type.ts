import { Field, Int, ObjectType } from 'type-graphql';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { HazardKind } from '../hazards/hazardKind.js';

@ObjectType({ description: 'A reading that a step asks for.', simpleResolvers: true })
export class AskedReading {
  @Field(() => String, { description: 'What is measured.' })
  quantity!: string;

  @Field(() => String, { description: 'Unit, UCUM.' })
  unit!: string;

  @Field(() => DecimalScalar, { nullable: true, description: 'At least; null if no lower end.' })
  lower!: string | null;

  @Field(() => DecimalScalar, { nullable: true, description: 'At most; null if no upper end.' })
  upper!: string | null;

  @Field(() => String, { description: 'Where the limit comes from.' })
  source!: string;
}

@ObjectType({ description: 'A step of a bring-up procedure.', simpleResolvers: true })
export class BringUpStepPlan {
  @Field(() => String, { description: 'Key of the step.' })
  key!: string;

  @Field(() => String, { description: 'What it is called.' })
  title!: string;

  @Field(() => Boolean, {
    description: 'A gate: later steps wait for it, and the bring-up stops when it fails.',
  })
  isGate!: boolean;

  @Field(() => Boolean, { description: 'The set is connected to a supply in this step.' })
  appliesPower!: boolean;

  @Field(() => [String], { description: 'What to do, in order.' })
  instructions!: string[];

  @Field(() => [String], { description: 'Statements to answer, in order.' })
  statements!: string[];

  @Field(() => [AskedReading], { description: 'Readings to take.' })
  readings!: AskedReading[];

  @Field(() => [String], { description: 'The usual cautions, the gravest first.' })
  cautions!: string[];

  @Field(() => String, { description: 'Where the step comes from.' })
  source!: string;

  @Field(() => HazardKind, {
    nullable: true,
    description: 'The hazard that is raised when this gate fails; null if none.',
  })
  hazardIfFailed!: HazardKind | null;
}

@ObjectType({
  description: 'The final check that a passed bring-up records.',
  simpleResolvers: true,
})
export class NamedFinalCheck {
  @Field(() => String, { description: 'Its name.' })
  procedure!: string;

  @Field(() => Int, { description: 'Days of 24 hours for which it holds.' })
  validDays!: number;
}

@ObjectType({
  description:
    'A checklist with gates for bringing a set up, from a file that a club may edit (seed/procedures). A reminder, not a licence.',
  simpleResolvers: true,
})
export class BringUpProcedure {
  @Field(() => String, { description: 'Key of the procedure.' })
  key!: string;

  @Field(() => String, { description: 'What it is called.' })
  title!: string;

  @Field(() => String, { description: 'What it is for.' })
  appliesTo!: string;

  @Field(() => String, { description: 'Whom to follow and where to get help.' })
  advice!: string;

  @Field(() => NamedFinalCheck, { description: 'What is recorded when every step is passed.' })
  finalCheck!: NamedFinalCheck;

  @Field(() => [BringUpStepPlan], { description: 'Its steps, in order.' })
  steps!: BringUpStepPlan[];
}
