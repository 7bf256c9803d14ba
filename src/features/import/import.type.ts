import { Field, Int, ObjectType } from 'type-graphql';
import { ListDelimiter } from './listDelimiter.js';
import { ListField } from './listField.js';

@ObjectType({ description: 'What a column of a list was taken for.', simpleResolvers: true })
export class ListColumn {
  @Field(() => String, { description: 'Its heading.' })
  column!: string;

  @Field(() => ListField, {
    nullable: true,
    description: 'The field; null: none, its content goes to the note unless it is ignored.',
  })
  field!: ListField | null;

  @Field(() => Boolean, { description: 'It is left out, as asked.' })
  isIgnored!: boolean;
}

@ObjectType({
  description: 'Something in a list that has to be mended before it can be loaded.',
  simpleResolvers: true,
})
export class ListProblem {
  @Field(() => Int, {
    nullable: true,
    description: 'Line in which the row begins, from 1; null when the whole list is at fault.',
  })
  line!: number | null;

  @Field(() => String, {
    nullable: true,
    description: 'Heading of the column; null when the whole row is at fault.',
  })
  column!: string | null;

  @Field(() => String, { description: 'What is wrong and what to do, as a sentence.' })
  message!: string;
}

@ObjectType({ description: 'What came of reading a list.', simpleResolvers: true })
export class ImportReport {
  @Field(() => Boolean, { description: 'It was only to be checked.' })
  isDryRun!: boolean;

  @Field(() => Int, { description: 'Rows below the headings, less empty ones.' })
  rowsRead!: number;

  @Field(() => Int, { description: 'Rows that are now in the collection: all of them, or 0.' })
  rowsLoaded!: number;

  @Field(() => String, {
    description: 'How its bytes were read, as the Encoding Standard names it.',
  })
  encoding!: string;

  @Field(() => ListDelimiter, { description: 'What its cells were divided by.' })
  delimiter!: ListDelimiter;

  @Field(() => [ListColumn], { description: 'Its columns in their order.' })
  columns!: ListColumn[];

  @Field(() => [String], { description: 'Models that were added, or would be.' })
  newModels!: string[];

  @Field(() => [String], { description: 'Places that were added, or would be.' })
  newPlaces!: string[];

  @Field(() => [String], { description: 'Parties that were added as persons, or would be.' })
  newParties!: string[];

  @Field(() => [String], { description: 'What is worth knowing and is no problem.' })
  remarks!: string[];

  @Field(() => Int, { description: 'How many problems there are in all.' })
  problemCount!: number;

  @Field(() => [ListProblem], {
    description: 'The first 1,000 problems, in the order of the rows.',
  })
  problems!: ListProblem[];
}
