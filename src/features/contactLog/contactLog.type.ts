import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, Float, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';

@ObjectType({
  description: 'A place in a log, and what is to be said of it.',
  simpleResolvers: true,
})
export class ContactLogPlace {
  @Field(() => Int, { description: 'Characters from the beginning of the text, from 0.' })
  offset!: number;

  @Field(() => Int, { description: 'The line, from 1.' })
  line!: number;

  @Field(() => String, { description: 'What is so, and what to do, as a sentence.' })
  message!: string;
}

@ObjectType({ description: 'What a log says of one rig and one day.', simpleResolvers: true })
export class ContactLogDay {
  @Field(() => String, { description: 'Inventory number of the rig.' })
  inventoryNumber!: string;

  @Field(() => GraphQLLocalDate, { description: 'The day, in the zone of the collection.' })
  day!: string;

  @Field(() => Int, { description: 'Contacts that were not counted before.' })
  contacts!: number;

  @Field(() => Float, { description: 'Hours on the air of the uses that began on that day.' })
  hours!: number;
}

@ObjectType({
  description: 'What a log says of the rig, and what it was taken for.',
  simpleResolvers: true,
})
export class ContactLogRig {
  @Field(() => String, {
    nullable: true,
    description: 'What stands in MY_RIG; null for contacts that do not say their rig.',
  })
  text!: string | null;

  @Field(() => Int, { description: 'In how many contacts.' })
  contacts!: number;

  @Field(() => String, {
    nullable: true,
    description: 'Inventory number of the rig; null: none or more than one is called so.',
  })
  inventoryNumber!: string | null;

  @Field(() => Boolean, { description: 'Its contacts are to be left out.' })
  isLeftOut!: boolean;
}

@ObjectType({ description: 'Contacts that are not counted, and why.', simpleResolvers: true })
export class ContactLogLeftOut {
  @Field(() => String, { description: 'Why, as a sentence.' })
  reason!: string;

  @Field(() => Int, { description: 'How many contacts.' })
  contacts!: number;
}

@ObjectType({ description: 'A field of a log that is not read.', simpleResolvers: true })
export class ContactLogField {
  @Field(() => String, { description: 'Its name, in capitals.' })
  name!: string;

  @Field(() => Int, { description: 'In how many contacts it stands.' })
  count!: number;
}

@ObjectType({ description: 'What came of reading a log of contacts.', simpleResolvers: true })
export class ContactLogReport {
  @Field(() => Boolean, { description: 'It was only to be checked.' })
  isDryRun!: boolean;

  @Field(() => String, {
    nullable: true,
    description: 'The version of ADIF that it says it follows; null if it says none.',
  })
  adifVersion!: string | null;

  @Field(() => Int, { description: 'Records in the log.' })
  contactsRead!: number;

  @Field(() => Int, { description: 'Contacts that are now counted: all that are new, or 0.' })
  contactsLoaded!: number;

  @Field(() => [ContactLogDay], { description: 'By day and rig: what was counted, or would be.' })
  days!: ContactLogDay[];

  @Field(() => Int, { description: 'Contacts that stand twice in it or were counted before.' })
  duplicateCount!: number;

  @Field(() => [ContactLogPlace], { description: 'The first 1,000 of these.' })
  duplicates!: ContactLogPlace[];

  @Field(() => [ContactLogRig], {
    description: 'Each text that names a rig, in the order of the log, and what it was taken for.',
  })
  rigTexts!: ContactLogRig[];

  @Field(() => [ContactLogLeftOut], { description: 'What is not counted, and why.' })
  leftOut!: ContactLogLeftOut[];

  @Field(() => [ContactLogField], {
    description: 'Fields that are not read, the most frequent first; they stay in the log alone.',
  })
  fieldsLeftOut!: ContactLogField[];

  @Field(() => [ContactLogPlace], { description: 'What is worth a look and is no problem.' })
  remarks!: ContactLogPlace[];

  @Field(() => Int, { description: 'How many problems there are in all.' })
  problemCount!: number;

  @Field(() => [ContactLogPlace], {
    description:
      'The first 1,000 problems: lengths that do not fit, dates that are none, rigs that are not known.',
  })
  problems!: ContactLogPlace[];

  @Field(() => Basis, { description: 'How contacts and hours were counted.' })
  basis!: Basis;
}
