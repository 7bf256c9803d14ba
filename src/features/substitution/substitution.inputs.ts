import { Field, ID, InputType, Int } from 'type-graphql';
import { SubstitutionGrade } from './substitutionGrade.js';

@InputType({ description: 'One part type may stand in for another.' })
export class RecordSubstitutionInput {
  @Field(() => ID, { description: 'The part type that is wanted.' })
  originalId!: string;

  @Field(() => ID, { description: 'The part type that stands in for it.' })
  substituteId!: string;

  @Field(() => SubstitutionGrade, { description: 'How well.' })
  grade!: SubstitutionGrade;

  @Field(() => Boolean, {
    defaultValue: false,
    description: 'The original stands in for the substitute as well.',
  })
  isMutual!: boolean;

  @Field(() => String, { nullable: true, description: 'What changes for the worse.' })
  consequence?: string | null;

  @Field(() => String, { nullable: true, description: 'What must be checked again.' })
  recheck?: string | null;

  @Field(() => String, { nullable: true, description: 'Who says so: a handbook, own trial.' })
  source?: string | null;
}

@InputType({ description: 'A change of a substitution; what is left out stays as it is.' })
export class ChangeSubstitutionInput {
  @Field(() => ID, { description: 'The substitution.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => SubstitutionGrade, { nullable: true, description: 'How well.' })
  grade?: SubstitutionGrade;

  @Field(() => Boolean, { nullable: true, description: 'It works both ways.' })
  isMutual?: boolean;

  @Field(() => String, {
    nullable: true,
    description: 'What changes for the worse; null: nothing.',
  })
  consequence?: string | null;

  @Field(() => String, {
    nullable: true,
    description: 'What must be checked again; null: nothing.',
  })
  recheck?: string | null;

  @Field(() => String, { nullable: true, description: 'Who says so; null if not recorded.' })
  source?: string | null;

  @Field(() => Boolean, { nullable: true, description: 'Take it out of use, or back into use.' })
  isRetired?: boolean;
}
