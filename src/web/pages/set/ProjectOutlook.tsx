import { useLiveQuery } from '../../api/useLiveQuery.js';
import { ProjectOutlookDocument } from '../../gql/graphql.js';
import { Failed } from '../../parts/Failed.js';
import { useFormats } from '../../locale/useFormats.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { LineChart, type ChartLine } from '../../parts/LineChart.js';
import { useTexts } from '../../texts/textsContext.js';

/** Earned and spent over time, and when it may be done, for a restoration under way. */
export function ProjectOutlook({ id, title }: { id: string; title: string }) {
  const { set } = useTexts();
  const formats = useFormats();
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: ProjectOutlookDocument,
    variables: { id },
  });
  if (error && !data) return <Failed error={error} retry={fetchAgain} />;
  const project = data?.node && 'forecast' in data.node ? data.node : null;
  if (!project) return null;
  const { burnUp, basis } = project.earnedValue;
  const { finish } = project.forecast;
  const line = (
    name: string,
    look: ChartLine['look'],
    hoursOf: (point: (typeof burnUp)[number]) => number | null,
  ): ChartLine => ({
    name,
    look,
    points: burnUp.flatMap((point) => {
      const value = hoursOf(point);
      return value === null ? [] : [{ at: Date.parse(point.on), value }];
    }),
  });
  const lines = [
    line(set.earnedLine, 'main', (point) => point.earnedHours),
    line(set.spentLine, 'dashed', (point) => point.spentHours),
    line(set.scopeLine, 'thin', (point) => point.scopeHours),
    line(set.plannedLine, 'dotted', (point) => point.plannedHours),
  ].filter(({ points }) => points.length > 1);
  const last = burnUp.at(-1);
  return (
    <>
      {last && lines.length > 0 && (
        <div>
          <h4>
            {set.overTime}
            <BasisButton of={`${title}: ${set.overTime}`} basis={basis} />
          </h4>
          <LineChart
            heard={set.earned(formats.hours(last.earnedHours), formats.hours(last.scopeHours))}
            lines={lines}
            writeTime={(at) => formats.day(new Date(at).toISOString())}
            writeValue={(value) => formats.number(value, 0)}
          />
        </div>
      )}
      {finish && (
        <p>
          {set.finish(
            finish.p50On ? formats.localDay(finish.p50On) : set.notWithinTwentyYears,
            finish.p80On ? formats.localDay(finish.p80On) : set.notWithinTwentyYears,
          )}
          <BasisButton of={set.finishName} basis={finish.basis} />
        </p>
      )}
    </>
  );
}
