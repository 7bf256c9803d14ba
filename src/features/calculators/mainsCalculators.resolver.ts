import { Args, FieldResolver, Resolver } from 'type-graphql';
import { buckingTransformer } from '../../domain/calculators/buckingTransformer.js';
import { fuseRating } from '../../domain/calculators/fuseRating.js';
import { heaterVoltage } from '../../domain/calculators/heaterVoltage.js';
import { leakage } from '../../domain/calculators/leakageLimits.js';
import { seriesDropper } from '../../domain/calculators/seriesDropper.js';
import { answered } from './answered.js';
import { Calculators } from './calculators.type.js';
import { Leakage } from './leakage.type.js';
import { BuckingTransformer, FuseRating, HeaterVoltage, SeriesDropper } from './mains.type.js';
import {
  BuckingTransformerArgs,
  FuseRatingArgs,
  HeaterVoltageArgs,
  LeakageArgs,
  SeriesDropperArgs,
} from './mainsCalculators.args.js';

@Resolver(() => Calculators)
export class MainsCalculatorsResolver {
  @FieldResolver(() => HeaterVoltage, {
    description: "A heater on today's mains against its tolerance.",
  })
  heaterVoltage(@Args() args: HeaterVoltageArgs) {
    return answered(() => heaterVoltage(args));
  }

  @FieldResolver(() => SeriesDropper, { description: 'A resistor that lowers the mains.' })
  seriesDropper(@Args() args: SeriesDropperArgs) {
    return answered(() => seriesDropper(args));
  }

  @FieldResolver(() => BuckingTransformer, { description: 'A transformer that lowers the mains.' })
  buckingTransformer(@Args() args: BuckingTransformerArgs) {
    return answered(() => buckingTransformer(args));
  }

  @FieldResolver(() => FuseRating, { description: 'A line fuse from the running current.' })
  fuseRating(@Args() { runningAmperes, factor, makersAmperes }: FuseRatingArgs) {
    return answered(() =>
      fuseRating({ runningAmperes, factor, makersAmperes: makersAmperes ?? null }),
    );
  }

  @FieldResolver(() => Leakage, {
    description: 'Earth bond, insulation and touch current against the published limits.',
  })
  leakage(
    @Args() { mainsVolts, earthBondOhms, insulationMegohms, touchMilliamperes }: LeakageArgs,
  ) {
    return answered(() =>
      leakage({
        mainsVolts,
        earthBondOhms: earthBondOhms ?? null,
        insulationMegohms: insulationMegohms ?? null,
        touchMilliamperes: touchMilliamperes ?? null,
      }),
    );
  }
}
