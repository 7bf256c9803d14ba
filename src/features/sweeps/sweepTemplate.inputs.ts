import { Field, ID, InputType, Int } from 'type-graphql';
import { ReadingTier } from '../readings/readingTier.js';
import { SweepQuantityInput } from './sweep.inputs.js';

@InputType({ description: 'What is read in which positions of a model, and how, under a name.' })
export class SaveSweepTemplateInput {
  @Field(() => ID, { description: 'The model whose sets it is for.' })
  modelId!: string;

  @Field(() => String, { description: 'How it is called; a model has each name once.' })
  name!: string;

  @Field(() => [String], {
    description: 'The positions, in the order of reading: 1 to 200 of the fit-out, each once.',
  })
  designators!: string[];

  @Field(() => [SweepQuantityInput], { description: 'The columns, from 1 to 20.' })
  quantities!: SweepQuantityInput[];

  @Field(() => ReadingTier, { description: 'On a tester, or in circuit.' })
  tier!: ReadingTier;

  @Field(() => String, { nullable: true, description: 'The instrument.' })
  instrument?: string | null;

  @Field(() => String, { nullable: true, description: 'How it is done.' })
  method?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A change of a sweep template; what is left out stays.' })
export class ChangeSweepTemplateInput {
  @Field(() => ID, { description: 'The sweep template.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'How it is called.' })
  name?: string;

  @Field(() => [String], { nullable: true, description: 'All its positions, in order.' })
  designators?: string[];

  @Field(() => [SweepQuantityInput], { nullable: true, description: 'All its columns.' })
  quantities?: SweepQuantityInput[];

  @Field(() => ReadingTier, { nullable: true, description: 'On a tester, or in circuit.' })
  tier?: ReadingTier;

  @Field(() => String, { nullable: true, description: 'The instrument; null: none named.' })
  instrument?: string | null;

  @Field(() => String, { nullable: true, description: 'How it is done; null: not said.' })
  method?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null: none.' })
  note?: string | null;

  @Field(() => Boolean, {
    nullable: true,
    description: 'True: it is offered no more; the sweeps taken with it stay.',
  })
  isRetired?: boolean;
}
