import { useLiveQuery } from '../../api/useLiveQuery.js';
import { SetTrendsDocument, type SetTrendsQuery } from '../../gql/graphql.js';
import { Failed } from '../../parts/Failed.js';
import { useFormats } from '../../locale/useFormats.js';
import { withUnit, writtenUnit } from '../../locale/writtenUnit.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { LineChart } from '../../parts/LineChart.js';
import { Sheet } from '../../parts/Sheet.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';

type Trend = NonNullable<SetTrendsQuery['item']>['trends'][number];

/** What was read on the set over the years, each quantity with its limits; nothing when none was. */
export function SetTrends({ number }: { number: string }) {
  const { set } = useTexts();
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: SetTrendsDocument,
    variables: { number },
  });
  if (error && !data) return <Failed error={error} retry={fetchAgain} />;
  const trends = data?.item?.trends ?? [];
  if (trends.length === 0) return null;
  return (
    <Sheet id="trends" title={set.trends}>
      {trends.map((trend) => (
        <OneTrend key={`${trend.quantity} ${trend.tier}`} trend={trend} />
      ))}
    </Sheet>
  );
}

function OneTrend({ trend }: { trend: Trend }) {
  const { set, words } = useTexts();
  const formats = useFormats();
  const { quantity, unit, outcome, readings, limitReached } = trend;
  const points = readings.map(({ takenAt, value }) => ({
    at: Date.parse(takenAt),
    value: Number(value),
  }));
  const limit = readings.at(-1)?.verdict.limit;
  const levels = [
    ...(limit?.lower ? [{ name: set.notBelow, value: Number(limit.lower), isLimit: true }] : []),
    ...(limit?.upper ? [{ name: set.notAbove, value: Number(limit.upper), isLimit: true }] : []),
  ];
  const last = readings.at(-1);
  const slope =
    trend.slopePerYear === null
      ? set.readingsMissing(trend.missingInstants)
      : set.slope(
          formats.number(trend.slopePerYear),
          trend.slopeLowPerYear === null ? '–' : formats.number(trend.slopeLowPerYear),
          trend.slopeHighPerYear === null ? '–' : formats.number(trend.slopeHighPerYear),
          writtenUnit(unit),
        );
  return (
    <section>
      <h3>
        {quantity}
        {unit !== '1' && `, ${writtenUnit(unit)}`}
        <BasisButton of={quantity} basis={trend.basis} />
      </h3>
      {points.length > 1 && (
        <LineChart
          name={quantity}
          heard={`${quantity}: ${words.trend[outcome]}. ${last ? withUnit(last.value, last.unit) : ''}`}
          lines={[{ name: quantity, look: 'main', points, hasDots: true }]}
          levels={levels}
          writeTime={(at) => formats.day(new Date(at).toISOString())}
          writeValue={(value) => formats.number(value)}
        />
      )}
      {last && (
        <p>
          {set.lastRead(
            withUnit(formats.number(Number(last.value)), last.unit),
            formats.day(last.takenAt),
            words.verdict[last.verdict.word],
          )}
        </p>
      )}
      <p>
        {words.trend[outcome]}. {slope}
        {limitReached &&
          ` ${set.limitReached(
            limitReached.earliest ? formats.day(limitReached.earliest) : '…',
            limitReached.latest ? formats.day(limitReached.latest) : '…',
          )}`}
      </p>
      {trend.whyEarlierLeftOut && <p {...fromApi}>{trend.whyEarlierLeftOut}</p>}
    </section>
  );
}
