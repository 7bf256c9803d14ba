import { Args, FieldResolver, Resolver } from 'type-graphql';
import { envelopePower } from '../../domain/calculators/envelopePower.js';
import { exposureDistance } from '../../domain/calculators/exposureDistance.js';
import { mismatch } from '../../domain/calculators/mismatch.js';
import { powerLevel } from '../../domain/calculators/powerLevel.js';
import { answered } from './answered.js';
import { Calculators } from './calculators.type.js';
import { EnvelopePower, ExposureDistance, LineMismatch, PowerLevel } from './radio.type.js';
import {
  EnvelopePowerArgs,
  ExposureDistanceArgs,
  MismatchArgs,
  PowerLevelArgs,
} from './radioCalculators.args.js';

@Resolver(() => Calculators)
export class RadioCalculatorsResolver {
  @FieldResolver(() => PowerLevel, { description: 'dBm, watts and volts from one of the three.' })
  powerLevel(@Args() { dbm, watts, voltsRms, ohms }: PowerLevelArgs) {
    return answered(() =>
      powerLevel({ dbm: dbm ?? null, watts: watts ?? null, voltsRms: voltsRms ?? null, ohms }),
    );
  }

  @FieldResolver(() => EnvelopePower, { description: 'Peak envelope power from a scope reading.' })
  envelopePower(@Args() args: EnvelopePowerArgs) {
    return answered(() => envelopePower(args));
  }

  @FieldResolver(() => LineMismatch, {
    description: 'Standing-wave ratio, reflection and return loss from one of them.',
  })
  mismatch(@Args() { swr, forwardWatts, reflectedWatts, returnLossDecibels }: MismatchArgs) {
    return answered(() =>
      mismatch({
        swr: swr ?? null,
        forwardWatts: forwardWatts ?? null,
        reflectedWatts: reflectedWatts ?? null,
        returnLossDecibels: returnLossDecibels ?? null,
      }),
    );
  }

  @FieldResolver(() => ExposureDistance, {
    description: 'Distance at which the far field keeps the limits of OET Bulletin 65.',
  })
  exposureDistance(@Args() args: ExposureDistanceArgs) {
    return answered(() => exposureDistance({ ...args, metres: args.metres ?? null }));
  }
}
