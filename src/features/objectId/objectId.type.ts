import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { describedEnum } from '../../api/kit/describedEnum.js';

export const ObjectIdCategory = describedEnum(
  'ObjectIdCategory',
  'The nine categories of the Object ID standard (ICOM).',
  {
    TYPE_OF_OBJECT: 'What kind of thing it is.',
    MATERIALS_AND_TECHNIQUES: 'What it is made of, and how.',
    MEASUREMENTS: 'Size and weight, with units.',
    INSCRIPTIONS_AND_MARKINGS: 'What is written, stamped or engraved on it: serial numbers.',
    DISTINGUISHING_FEATURES: 'What only this one has: damage, repairs, changes.',
    TITLE: 'What it is called.',
    SUBJECT: 'What it pictures or stands for; apparatus pictures nothing as a rule.',
    DATE_OR_PERIOD: 'When it was made.',
    MAKER: 'Who made it.',
  },
);
export type ObjectIdCategory = keyof typeof ObjectIdCategory;

export const ObjectIdSource = describedEnum(
  'ObjectIdSource',
  'Where the answer to a category of Object ID comes from.',
  {
    WRITTEN: 'Somebody wrote it for this sheet.',
    OTHER_RECORDS: 'It follows from other records of the item, its model or its findings.',
    NOT_APPLICABLE: 'Somebody said that it cannot apply to this item.',
    MISSING: 'Nobody recorded it.',
  },
);
export type ObjectIdSource = keyof typeof ObjectIdSource;

@ObjectType({ description: 'One category of Object ID, answered or not.', simpleResolvers: true })
export class ObjectIdAnswer {
  @Field(() => ObjectIdCategory, { description: 'The category.' })
  category!: ObjectIdCategory;

  @Field(() => String, { nullable: true, description: 'The answer; null for none.' })
  answer!: string | null;

  @Field(() => ObjectIdSource, { description: 'Where the answer comes from.' })
  source!: ObjectIdSource;
}

@ObjectType({
  description:
    'What tells an item from every other, by the nine categories of Object ID (ICOM): the sheet ' +
    'that the police, customs and insurers ask for after a theft.',
  simpleResolvers: true,
})
export class ObjectIdSheet {
  @Field(() => Int, {
    nullable: true,
    description: 'Version of what was written for the sheet; null while nothing was.',
  })
  version!: number | null;

  @Field(() => [ObjectIdAnswer], { description: 'All nine categories, in the standard’s order.' })
  answers!: ObjectIdAnswer[];

  @Field(() => Boolean, { description: 'True when no category is missing.' })
  isComplete!: boolean;

  @Field(() => [ObjectIdCategory], { description: 'Categories that nobody recorded.' })
  missing!: ObjectIdCategory[];

  @Field(() => String, { description: "The collector's own number." })
  inventoryNumber!: string;

  @Field(() => String, { nullable: true, description: 'In a few sentences; null if not written.' })
  description!: string | null;

  @Field(() => String, { nullable: true, description: 'Where it was made; null if not recorded.' })
  placeOfOrigin!: string | null;

  @Field(() => String, {
    nullable: true,
    description: 'Papers that bear on it; null if none are recorded.',
  })
  relatedPapers!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When the sheet was last written on; null while it never was.',
  })
  documentedAt!: string | null;

  @Field(() => Basis, { description: 'What the sheet rests on.' })
  basis!: Basis;
}
