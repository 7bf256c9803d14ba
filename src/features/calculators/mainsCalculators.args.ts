import { ArgsType, Field, Float } from 'type-graphql';
import { FilamentKind } from './mains.type.js';

const theMains = { description: 'The mains as measured today, in volts.' };
const theLoad = { description: 'What the set draws, in amperes.' };

@ArgsType()
export class HeaterVoltageArgs {
  @Field(() => Float, { defaultValue: 6.3, description: 'Nominal heater voltage.' })
  heaterVolts!: number;

  @Field(() => Float, { description: 'The mains that the set was made for, in volts.' })
  designMainsVolts!: number;

  @Field(() => Float, theMains)
  mainsVolts!: number;

  @Field(() => FilamentKind, { defaultValue: 'RECEIVING', description: 'What is heated.' })
  filament!: FilamentKind;
}

@ArgsType()
export class SeriesDropperArgs {
  @Field(() => Float, theMains)
  mainsVolts!: number;

  @Field(() => Float, { description: 'What the set should get, in volts.' })
  wantedVolts!: number;

  @Field(() => Float, theLoad)
  loadAmperes!: number;
}

@ArgsType()
export class BuckingTransformerArgs {
  @Field(() => Float, theMains)
  mainsVolts!: number;

  @Field(() => Float, { description: 'Nominal voltage of the secondary.' })
  windingVolts!: number;

  @Field(() => Float, { description: 'Nominal voltage of its primary.' })
  primaryVolts!: number;

  @Field(() => Float, theLoad)
  loadAmperes!: number;
}

@ArgsType()
export class FuseRatingArgs {
  @Field(() => Float, { description: 'What the set draws when it runs, in amperes.' })
  runningAmperes!: number;

  @Field(() => Float, { defaultValue: 1.5, description: 'How much above it, 1 to 3.' })
  factor!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'The fuse that the maker names, in amperes, if known.',
  })
  makersAmperes?: number | null;
}

@ArgsType()
export class LeakageArgs {
  @Field(() => Float, theMains)
  mainsVolts!: number;

  @Field(() => Float, { nullable: true, description: 'Earth pin to chassis, in ohms.' })
  earthBondOhms?: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Line conductors to chassis at 500 V DC, in megohms.',
  })
  insulationMegohms?: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Chassis to earth, in mA root mean square.',
  })
  touchMilliamperes?: number | null;
}
