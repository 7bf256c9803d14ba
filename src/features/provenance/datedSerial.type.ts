import { GraphQLDateTimeISO, GraphQLLocalDate } from 'graphql-scalars';
import { Field, ID, InputType, Int, ObjectType } from 'type-graphql';
import { Node } from '../../api/kit/node.type.js';

@ObjectType({
  implements: Node,
  description: 'A set of a model, here or elsewhere, with known serial number and date of making.',
  simpleResolvers: true,
})
export class DatedSerial extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: 'Its serial number.' })
  serialNumber!: string;

  @Field(() => String, { description: 'When it was made, as written (EDTF).' })
  dateEdtf!: string;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'First day of it; null if open.' })
  earliestOn!: string | null;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'Last day of it; null if open.' })
  latestOn!: string | null;

  @Field(() => String, { description: 'Where this is known from.' })
  source!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Since when it counts no more; null while it does.',
  })
  withdrawnAt!: string | null;
}

@InputType({ description: 'A serial number of known date, to date others of the model by.' })
export class RecordDatedSerialInput {
  @Field(() => ID, { description: 'The model.' })
  modelId!: string;

  @Field(() => String, { description: 'The serial number as written on the set.' })
  serialNumber!: string;

  @Field(() => String, { description: 'When that set was made, as EDTF; 1957-04 or 1957.' })
  dateEdtf!: string;

  @Field(() => String, { description: 'Where this is known from.' })
  source!: string;
}

@InputType({ description: 'A change of a dated serial number; what is left out stays.' })
export class ChangeDatedSerialInput {
  @Field(() => ID, { description: 'The dated serial number.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'The serial number.' })
  serialNumber?: string;

  @Field(() => String, { nullable: true, description: 'When that set was made, as EDTF.' })
  dateEdtf?: string;

  @Field(() => String, { nullable: true, description: 'Where this is known from.' })
  source?: string;

  @Field(() => Boolean, { nullable: true, description: 'True: it counts no more.' })
  isWithdrawn?: boolean;
}
