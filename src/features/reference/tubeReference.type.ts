import { Field, ObjectType } from 'type-graphql';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { DecimalScalar } from '../../api/kit/scalars.js';
import type { TubeClass as DomainTubeClass } from '../../domain/parts/tubeClass.js';
import { ReferenceSourceType } from './reference.type.js';

const sentences = {
  SHARP_PENTODE: 'A pentode with a sharp cutoff: amplifiers without gain control, mixers.',
  SEMIREMOTE_PENTODE: 'A pentode whose cutoff lies between sharp and remote.',
  REMOTE_PENTODE: 'A pentode with a remote cutoff, for stages with gain control.',
  POWER_PENTODE: 'A pentode for power: drivers, audio output.',
  BEAM_POWER: 'A beam power tube.',
  TETRODE: 'A transmitting tetrode.',
  TRIODE: 'One triode.',
  TWIN_TRIODE: 'Two triodes in one envelope.',
  POWER_TRIODE: 'A transmitting triode.',
  TRIODE_PENTODE: 'A triode and a pentode in one envelope.',
  CONVERTER: 'A pentagrid converter: oscillator and mixer.',
  GATED_HEPTODE: 'A heptode with two control grids of sharp cutoff.',
  TWIN_DIODE: 'Two signal diodes.',
  DIODE_TRIODE: 'A triode with one or two diodes.',
  FULL_WAVE_RECTIFIER: 'A rectifier with two plates.',
  HALF_WAVE_RECTIFIER: 'A rectifier with one plate.',
  REGULATOR: 'A gas-filled voltage regulator.',
} as const satisfies Record<DomainTubeClass, string>;

export const TubeClass = describedEnum('TubeClass', 'What a tube is made to do.', sentences);
export type TubeClass = keyof typeof TubeClass;

@ObjectType({
  description: 'One published rating of a tube type.',
  simpleResolvers: true,
})
export class PublishedRating {
  @Field(() => String, { description: 'Name of the quantity: heater voltage.' })
  name!: string;

  @Field(() => DecimalScalar, { description: 'The value, in `unit`.' })
  value!: string;

  @Field(() => String, { description: 'UCUM code of the unit: V, A, uS, W, pF.' })
  unit!: string;

  @Field(() => Boolean, {
    description: 'A published source has been compared; if not, no verdict rests on it.',
  })
  isConfirmed!: boolean;

  @Field(() => [ReferenceSourceType], { description: 'Those sources; memory where there is none.' })
  sources!: ReferenceSourceType[];
}

@ObjectType({
  description: 'What the reference table that comes with the program has on a tube type.',
  simpleResolvers: true,
})
export class TubeReference {
  @Field(() => String, { description: 'Designation in the table.' })
  designation!: string;

  @Field(() => [String], { description: 'Other names of the same type.' })
  otherNames!: string[];

  @Field(() => TubeClass, { description: 'What it is made to do.' })
  tubeClass!: TubeClass;

  @Field(() => Boolean, { description: 'The class is confirmed by a published source.' })
  isClassConfirmed!: boolean;

  @Field(() => String, { description: 'Basing code: which pin is what: 7BK.' })
  base!: string;

  @Field(() => Boolean, { description: 'The basing code is confirmed by a published source.' })
  isBaseConfirmed!: boolean;

  @Field(() => Boolean, {
    description: 'The heater works at half its volts and twice its current.',
  })
  hasTappedHeater!: boolean;

  @Field(() => [PublishedRating], { description: 'Ratings, each with its sources.' })
  ratings!: PublishedRating[];

  @Field(() => String, { nullable: true, description: 'How to read the ratings; null if plain.' })
  note!: string | null;
}
