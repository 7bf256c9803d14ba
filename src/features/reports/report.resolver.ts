import { GraphQLLocalDate } from 'graphql-scalars';
import { Arg, Args, ArgsType, Ctx, Field, ID, Query, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { readArguments } from '../../api/kit/argumentProblem.js';
import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { maintenanceText, hoursText, progressText, sessionsText } from './reportTexts.js';
import { ReportFormat } from './reportFormat.js';

@ArgsType()
class ReportArgs {
  @Field(() => GraphQLLocalDate, { description: "First day, in the collection's zone." })
  from!: string;

  @Field(() => GraphQLLocalDate, { description: 'Last day, included; ten years at the most.' })
  to!: string;

  @Field(() => ID, { nullable: true, description: 'Only this rig or accessory.' })
  itemId?: string | null;
}

const scopeOf = ({ from, to, itemId }: ReportArgs) => ({
  from,
  to,
  itemId: readArguments(() => (itemId ? recordId(itemTypes, itemId, ['itemId']) : null)),
});

@Resolver()
export class ReportResolver {
  @Query(() => String, {
    description:
      'Work sessions begun in these days as CSV (RFC 4180), a session a row. Texts that a spreadsheet would take for a formula have an apostrophe in front.',
  })
  hoursCsv(@Args() args: ReportArgs, @Ctx() context: ApiContext): Promise<string> {
    return hoursText(context, scopeOf(args));
  }

  @Query(() => String, {
    description: 'Work sessions begun in these days as iCalendar (RFC 5545), times in UTC.',
  })
  sessionsCalendar(@Args() args: ReportArgs, @Ctx() context: ApiContext): Promise<string> {
    return sessionsText(context, scopeOf(args));
  }

  @Query(() => String, {
    description:
      'The days on which final checks go stale and maintenance falls due as iCalendar (RFC 5545), all-day events in the zone of the collection. What waits for hours of use stands on today once they are spent.',
  })
  maintenanceCalendar(@Ctx() context: ApiContext): Promise<string> {
    return maintenanceText(context);
  }

  @Query(() => String, {
    description:
      'What was done in these days, for those who follow the work: hours, what was finished, readings before and after, parts, photographs, what is next. No prices, places or persons of the collection. HTML has the photographs in it, without what the camera wrote; Markdown names where this server hands them out.',
  })
  progressReport(
    @Args() args: ReportArgs,
    @Arg('format', () => ReportFormat, {
      defaultValue: ReportFormat.MARKDOWN,
      description: 'How it is written.',
    })
    format: ReportFormat,
    @Ctx() context: ApiContext,
  ): Promise<string> {
    return progressText(context, scopeOf(args), format);
  }
}
