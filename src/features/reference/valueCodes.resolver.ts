import { Arg, Float, Int, Query, Resolver } from 'type-graphql';
import { argumentProblem } from '../../api/kit/argumentProblem.js';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { decodeColours } from '../../domain/values/decodeColours.js';
import { decodeLetters } from '../../domain/values/decodeLetters.js';
import { nearestPreferred } from '../../domain/values/nearestPreferred.js';
import { dateCodeYears, readDateCode } from '../../domain/values/readDateCode.js';
import { worstDeviation } from '../../domain/values/worstDeviation.js';
import { shownSource } from './shownSource.js';
import {
  DateCodeReadingType,
  DecodedValue,
  MarkedPart,
  PreferredSeries,
  PreferredValues,
} from './valueCodes.type.js';
import { ResistorColour } from './resistorColour.js';
import { colourCode, dateCodeFormats, letterCode, preferredSeries } from './valueTables.js';

const longestMarking = 40;

/** Calculators on published tables; they read nothing of the collection. */
@Resolver()
export class ValueCodesResolver {
  @Query(() => PreferredValues, {
    description: 'The values of a preferred series nearest to one that is wanted, or obsolete.',
  })
  preferredValues(
    @Arg('value', () => DecimalScalar, { description: 'More than 0, in any unit.' }) value: string,
    @Arg('series', () => PreferredSeries, { defaultValue: 'E12', description: 'Which series.' })
    series: PreferredSeries,
    @Arg('withinPercent', () => Float, {
      defaultValue: 20,
      description: 'How far a value may lie off and still serve; 0 to 100.',
    })
    withinPercent: number,
  ): PreferredValues {
    const wanted = Number(value);
    if (!(wanted > 1e-30 && wanted < 1e30)) throw argumentProblem('Give a value above 0.');
    if (!(withinPercent >= 0 && withinPercent <= 100)) {
      throw argumentProblem('Give a tolerance from 0 to 100 percent.');
    }
    const table = preferredSeries.get(series);
    if (!table) throw new Error(`preferred-values.yaml has no series ${series}`);
    const found = nearestPreferred(wanted, table.values, withinPercent);
    const shown = found.map(({ value: preferred, differencePercent }) => ({
      value: preferred,
      differencePercent,
      worstDeviationPercent: worstDeviation(differencePercent, Number(table.tolerancePercent)),
    }));
    const [nearest] = shown;
    if (!nearest) throw new Error('a series is never empty');
    const serving = shown.filter((one) => Math.abs(one.differencePercent) <= withinPercent + 1e-9);
    const { tolerancePercent, source } = table;
    return { nearest, serving, tolerancePercent, source: shownSource(source) };
  }

  @Query(() => DecodedValue, {
    description:
      'What the coloured bands of a resistor say (IEC 60062): 3 to 6 colours, from the end where they begin. Body-end-dot marking: body, end, dot, then the tolerance at the other end.',
  })
  resistorByColours(
    @Arg('colours', () => [ResistorColour], { description: 'In order.' })
    colours: ResistorColour[],
  ): DecodedValue {
    const decoded = decodeColours(colours, colourCode.colours);
    if (decoded.kind === 'refused') return unread(decoded.why, colourCode.source);
    const { ohms, ...rest } = decoded.value;
    const source = shownSource(colourCode.source);
    return { ...rest, value: ohms, unit: 'Ohm', problem: null, source };
  }

  @Query(() => DecodedValue, {
    description:
      'What a value code says (IEC 60062): 4K7, R47, 2n2, 4K7J; or three figures of a capacitor in picofarads: 104.',
  })
  valueByLetters(
    @Arg('marking', () => String, { description: 'As printed.' }) marking: string,
    @Arg('on', () => MarkedPart, {
      nullable: true,
      description: 'What it is printed on; some markings need it.',
    })
    on?: MarkedPart | null,
  ): DecodedValue {
    const decoded = decodeLetters(marking.slice(0, longestMarking), letterCode, on ?? null);
    if (decoded.kind === 'refused') return unread(decoded.why, letterCode.source);
    const { value, unit, tolerancePercent, isToleranceConfirmed } = decoded.value;
    const source = shownSource(letterCode.source);
    return { value, unit, tolerancePercent, isToleranceConfirmed, ...silent, source };
  }

  @Query(() => [DateCodeReadingType], {
    description:
      'Everything that a date code on a part may mean, oldest first; empty when it is no code of a known kind. Other evidence decides between them.',
  })
  dateCodeReadings(
    @Arg('code', () => String, { description: 'As printed: 137634, 606-4-21.' }) code: string,
    @Arg('fromYear', () => Int, {
      defaultValue: dateCodeYears.from,
      description: 'The first year that other evidence leaves open.',
    })
    fromYear: number,
    @Arg('toYear', () => Int, {
      defaultValue: dateCodeYears.to,
      description: 'The last year that other evidence leaves open.',
    })
    toYear: number,
  ): DateCodeReadingType[] {
    if (fromYear < 1900 || toYear > 2100) throw argumentProblem('Give years from 1900 to 2100.');
    const formats = new Map(dateCodeFormats.map((one) => [one.format, one]));
    const years = { from: fromYear, to: toYear };
    return readDateCode(code.slice(0, longestMarking), dateCodeFormats, years).map((reading) => {
      const format = formats.get(reading.format);
      if (!format) throw new Error(`date-codes.yaml has no format ${reading.format}`);
      const { earliest, latest, year, week, maker } = reading;
      const { meaning, source } = format;
      return { earliest, latest, year, week, maker, meaning, source: shownSource(source) };
    });
  }
}

const silent = { ppmPerKelvin: null, problem: null };

const unread = (problem: string, source: string): DecodedValue => ({
  value: null,
  unit: null,
  tolerancePercent: null,
  isToleranceConfirmed: true,
  ppmPerKelvin: null,
  problem,
  source: shownSource(source),
});
