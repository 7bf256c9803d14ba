import { Field, ID, InputType, Int } from 'type-graphql';
import { ComponentOrigin } from './componentOrigin.js';

@InputType({ description: 'A physical part: say its type, or what is printed on it, or both.' })
export class NewComponentInput {
  @Field(() => ID, { nullable: true, description: 'Its part type, whose limits it is held to.' })
  partTypeId?: string | null;

  @Field(() => String, { nullable: true, description: 'What is printed on it, or what it is.' })
  marking?: string | null;

  @Field(() => String, { nullable: true, description: 'Date code as printed.' })
  dateCode?: string | null;

  @Field(() => ComponentOrigin, {
    defaultValue: ComponentOrigin.UNKNOWN,
    description: 'Whether it came with the set.',
  })
  origin!: ComponentOrigin;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A correction of a component; what is left out stays as it is.' })
export class ChangeComponentInput {
  @Field(() => ID, { description: 'The component.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => ID, { nullable: true, description: 'Its part type; null if unknown.' })
  partTypeId?: string | null;

  @Field(() => String, { nullable: true, description: 'What is printed on it; null if nothing.' })
  marking?: string | null;

  @Field(() => String, { nullable: true, description: 'Date code; null if none.' })
  dateCode?: string | null;

  @Field(() => ComponentOrigin, { nullable: true, description: 'Whether it came with the set.' })
  origin?: ComponentOrigin;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
