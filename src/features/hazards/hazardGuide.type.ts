import { Field, ObjectType } from 'type-graphql';
import { HazardKind } from './hazardKind.js';

@ObjectType('HazardGuide', {
  description:
    'What to know of one kind of hazard. A reminder, not a licence: local codes and qualified help come first.',
  simpleResolvers: true,
})
export class HazardGuideType {
  @Field(() => HazardKind, { description: 'The kind.' })
  kind!: HazardKind;

  @Field(() => String, { description: 'How it is recognised.' })
  recognisedBy!: string;

  @Field(() => [String], { description: 'The usual cautions, the gravest first.' })
  cautions!: string[];

  @Field(() => [String], { description: 'What protects those who work on it.' })
  protection!: string[];

  @Field(() => String, { description: 'The check that clears it.' })
  clearedBy!: string;

  @Field(() => Boolean, {
    description:
      'It belongs to the design and stays: a caution for ever, and by itself no reason to leave the set off.',
  })
  belongsToDesign!: boolean;

  @Field(() => String, { description: 'Whom to follow and where to get help.' })
  advice!: string;

  @Field(() => String, {
    description: 'Where it comes from; "common practice, no source" or "from memory" where so.',
  })
  source!: string;
}
