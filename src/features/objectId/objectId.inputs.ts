import { Field, ID, InputType, Int } from 'type-graphql';
import { ObjectIdCategory } from './objectId.type.js';

const text = (description: string): PropertyDecorator =>
  Field(() => String, { nullable: true, description: `${description} Null for none.` });

@InputType({
  description: 'What tells an item from every other; what is left out stays as it is.',
})
export class IdentifyItemInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => Int, {
    nullable: true,
    description: 'The version of the sheet that you saw; leave it out where there was none.',
  })
  version?: number | null;

  @text('What kind of thing it is.')
  objectType?: string | null;

  @text('What it is made of, and how.')
  materials?: string | null;

  @text('Size and weight, with units.')
  measurements?: string | null;

  @text('What is written, stamped or engraved on it.')
  inscriptions?: string | null;

  @text('What only this one has.')
  distinguishingFeatures?: string | null;

  @text('What it is called.')
  title?: string | null;

  @text('What it pictures or stands for.')
  subject?: string | null;

  @text('Who made it, where the model does not say.')
  maker?: string | null;

  @text('Where it was made.')
  placeOfOrigin?: string | null;

  @text('Papers that bear on it.')
  relatedPapers?: string | null;

  @text('A description in a few sentences.')
  description?: string | null;

  @Field(() => [ObjectIdCategory], {
    nullable: true,
    description: 'Categories that cannot apply to it.',
  })
  notApplicable?: ObjectIdCategory[] | null;
}
