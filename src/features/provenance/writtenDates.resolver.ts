import { GraphQLLocalDate } from 'graphql-scalars';
import { Arg, Ctx, Field, ObjectType, Query, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { compareDates } from '../../domain/dates/compareDates.js';
import { readShorthand } from '../../domain/dates/readShorthand.js';
import { readEdtf } from './edtfRange.js';

export const DateRelation = describedEnum(
  'DateRelation',
  'How one uncertain date stands to another.',
  {
    BEFORE: 'The first was before the second, whatever the true days are.',
    AFTER: 'The first was after the second, whatever the true days are.',
    WITHIN: 'Every day of the first is a day of the second.',
    OVERLAPPING: 'They share days, and the first is not within the second.',
    UNDECIDED: 'A bound that would be needed is open or unknown, or one of the two is no date.',
  },
);
export type DateRelation = keyof typeof DateRelation;

@ObjectType({ description: 'A reading of a date in people’s own words.', simpleResolvers: true })
export class DateOffer {
  @Field(() => String, { description: 'The date as EDTF (ISO 8601-2).' })
  edtf!: string;

  @Field(() => String, { description: 'What it was read as.' })
  readAs!: string;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'First day; null if open.' })
  earliestOn!: string | null;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'Last day; null if open.' })
  latestOn!: string | null;
}

@ObjectType({ description: 'A date as somebody wrote it, read.', simpleResolvers: true })
export class WrittenDateReading {
  @Field(() => Boolean, { description: 'True when it is EDTF (ISO 8601-2) as it stands.' })
  isEdtf!: boolean;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'First day of it; null if open, or if it is not EDTF.',
  })
  earliestOn!: string | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'Last day of it; null if open, or if it is not EDTF.',
  })
  latestOn!: string | null;

  @Field(() => [DateOffer], {
    description: 'What it may mean, to choose from; empty when it is EDTF or cannot be read.',
  })
  offers!: DateOffer[];

  @Field(() => String, { nullable: true, description: 'Why it cannot be kept; null if it can.' })
  problem!: string | null;
}

const longest = 200;

@Resolver()
export class WrittenDatesResolver {
  @Query(() => WrittenDateReading, {
    description:
      'Reads a date as EDTF, or offers EDTF for people’s words: "about 1962", "late 60s".',
  })
  readDate(
    @Arg('text', () => String, { description: 'The date as written.' }) text: string,
    @Ctx() { nowMs }: ApiContext,
  ): WrittenDateReading {
    const reading = readEdtf(text.slice(0, longest));
    const open = { earliestOn: null, latestOn: null, offers: [], problem: null };
    if (reading.kind === 'range') {
      const { earliestOn, latestOn } = reading;
      return { ...open, isEdtf: true, earliestOn, latestOn };
    }
    if (reading.kind === 'beyond') {
      return { ...open, isEdtf: true, problem: 'It lies outside the years 0001 to 9999.' };
    }
    const offers = readShorthand(text, new Date(nowMs).toISOString().slice(0, 10)).flatMap(
      (offer): DateOffer[] => {
        const days = readEdtf(offer.edtf);
        if (days.kind !== 'range') return [];
        return [{ ...offer, earliestOn: days.earliestOn, latestOn: days.latestOn }];
      },
    );
    return { ...open, isEdtf: false, offers, problem: offers.length > 0 ? null : reading.why };
  }

  @Query(() => DateRelation, {
    description: 'Compares two uncertain dates (EDTF) by the days that each allows.',
  })
  compareDates(
    @Arg('first', () => String, { description: 'A date as EDTF.' }) first: string,
    @Arg('second', () => String, { description: 'Another.' }) second: string,
  ): DateRelation {
    const days = [first, second].map((text) => {
      const reading = readEdtf(text.slice(0, longest));
      return reading.kind === 'range'
        ? { earliest: reading.earliestOn, latest: reading.latestOn }
        : { earliest: null, latest: null };
    });
    const [one, other] = days;
    return one && other ? compareDates(one, other) : 'UNDECIDED';
  }
}
