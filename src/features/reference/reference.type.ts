import { Field, ObjectType } from 'type-graphql';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { AllocationStatus } from './allocationStatus.js';
import { ItuRegion } from './ituRegion.js';

@ObjectType('ReferenceSource', {
  description: 'Where a figure of the reference tables comes from.',
  simpleResolvers: true,
})
export class ReferenceSourceType {
  @Field(() => String, { description: 'Title, edition, page or table.' })
  title!: string;

  @Field(() => String, { nullable: true, description: 'Where it was read; null if nowhere.' })
  address!: string | null;

  @Field(() => Boolean, {
    description: 'False: from memory, compared with no published page; no verdict rests on it.',
  })
  isPublished!: boolean;
}

@ObjectType('AmateurBand', {
  description:
    'A band of the amateur service in one ITU region. An allocation is no permission: the licence held and national rules decide, and often allow less.',
  simpleResolvers: true,
})
export class AmateurBandType {
  @Field(() => String, { description: 'Wavelength name, as in a capability of a model: 40m.' })
  band!: string;

  @Field(() => ItuRegion, { description: 'The region.' })
  region!: ItuRegion;

  @Field(() => DecimalScalar, { description: 'Lower edge in kHz.' })
  lowerKilohertz!: string;

  @Field(() => DecimalScalar, { description: 'Upper edge in kHz.' })
  upperKilohertz!: string;

  @Field(() => AllocationStatus, { description: 'How the service stands there.' })
  status!: AllocationStatus;

  @Field(() => String, { nullable: true, description: 'What else to know; null if nothing.' })
  note!: string | null;

  @Field(() => [ReferenceSourceType], { description: 'Where the edges come from.' })
  sources!: ReferenceSourceType[];
}
