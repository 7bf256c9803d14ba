import { Args, FieldResolver, Query, Resolver } from 'type-graphql';
import { bleederResistor } from '../../domain/calculators/bleederResistor.js';
import { dischargeTime } from '../../domain/calculators/dischargeTime.js';
import { reforming } from '../../domain/calculators/reforming.js';
import { preferredSeries } from '../reference/valueTables.js';
import { answered } from './answered.js';
import { Calculators } from './calculators.type.js';
import {
  BleederResistorArgs,
  DischargeTimeArgs,
  ReformingArgs,
} from './capacitorCalculators.args.js';
import { BleederResistor, DischargeTime } from './discharge.type.js';
import { Reforming } from './reforming.type.js';

@Resolver(() => Calculators)
export class CapacitorCalculatorsResolver {
  @Query(() => Calculators, { description: 'Sums for the bench; nothing is recorded.' })
  calculators() {
    return {};
  }

  @FieldResolver(() => DischargeTime, {
    description: 'Stored energy and discharge time, against every published threshold.',
  })
  dischargeTime(@Args() args: DischargeTimeArgs) {
    return answered(() => dischargeTime(args));
  }

  @FieldResolver(() => BleederResistor, {
    description: 'Value and wattage of a bleeder for a stated time; values of E24.',
  })
  bleederResistor(@Args() args: BleederResistorArgs) {
    const values = preferredSeries.get('E24')?.values ?? [];
    return answered(() => bleederResistor(args, values));
  }

  @FieldResolver(() => Reforming, {
    description: 'Series resistor, current and schedule for re-forming an electrolytic capacitor.',
  })
  reforming(@Args() { ratedVolts, supplyVolts, monthsStored, rule }: ReformingArgs) {
    return answered(() =>
      reforming({
        ratedVolts,
        supplyVolts: supplyVolts ?? null,
        monthsStored: monthsStored ?? null,
        rule: rule ?? null,
      }),
    );
  }
}
