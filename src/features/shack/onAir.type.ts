import { GraphQLDateTimeISO } from 'graphql-scalars';
import { ArgsType, Field, Float, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { AmateurBandType } from '../reference/reference.type.js';

export const OutputGround = describedEnum('OutputGround', 'What a figure of output rests on.', {
  READING: 'The latest reading of output power on that band decides.',
  MODEL: 'As the model was made; nothing has been measured on this rig.',
  NOTHING: 'It works on that band and mode, but no power is recorded.',
});
export type OutputGround = keyof typeof OutputGround;

@ArgsType()
export class OnAirArgs {
  @Field(() => String, { description: 'The band by its wavelength: 40m, or 40 m.' })
  band!: string;

  @Field(() => String, { description: 'Kind of emission: CW, SSB, AM, RTTY.' })
  mode!: string;

  @Field(() => Float, { nullable: true, description: 'At least so many watts of output.' })
  atLeastWatts!: number | null;

  @Field(() => Boolean, {
    defaultValue: false,
    description:
      'This evening, 20:00 in the zone of the collection; final checks must hold until then.',
  })
  tonight!: boolean;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'At that moment, past or to come, instead; now if left out.',
  })
  at!: Date | null;
}

@ObjectType({ description: 'A rig that can be on the air as asked.', simpleResolvers: true })
export class OnAirRig {
  @Field(() => Float, {
    nullable: true,
    description: 'Output in watts as it stands; null if unknown.',
  })
  watts!: number | null;

  @Field(() => OutputGround, { description: 'What the figure rests on.' })
  restsOn!: OutputGround;

  @Field(() => Boolean, {
    description: 'Among the most of these rigs that can be on the air at once, served as shown.',
  })
  isAtOnce!: boolean;

  @Field(() => [String], { description: 'What to know before using it; empty if nothing.' })
  cautions!: string[];
}

@ObjectType({
  description: 'Which rigs can be on the air on a band and mode, and with what.',
  simpleResolvers: true,
})
export class OnAirAnswer {
  @Field(() => GraphQLDateTimeISO, { description: 'The moment that was asked about.' })
  at!: string;

  @Field(() => AmateurBandType, {
    nullable: true,
    description: 'The band in the region of the station; null if the region is unsaid or lacks it.',
  })
  allocation!: AmateurBandType | null;

  @Field(() => String, { description: 'What governs, whatever is written here.' })
  licenceNotice!: string;

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
