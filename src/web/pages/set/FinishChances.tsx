import { useFormats } from '../../locale/useFormats.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { LineChart } from '../../parts/LineChart.js';
import { useTexts } from '../../texts/textsContext.js';
import type { Outlook } from './burnUpShape.js';

/** When it may be done, as the chance that it is done by each day to come. */
export function FinishChances({
  forecast,
  title,
}: {
  forecast: NonNullable<Outlook['forecast']>;
  title: string;
}) {
  const { set } = useTexts();
  const formats = useFormats();
  const { finish, hours, weeksAhead } = forecast;
  if (hours.p95Hours === 0) return <p>{set.nothingLeft}</p>;
  if (!finish) return <p>{set.noPace}</p>;
  const dayOr = (day: string | null) => (day ? formats.localDay(day) : set.notWithinTwentyYears);
  const said = set.finish(dayOr(finish.p50On), dayOr(finish.p80On));
  const marks = [
    { share: 0.5, on: finish.p50On },
    { share: 0.8, on: finish.p80On },
    { share: 0.95, on: finish.p95On },
  ].flatMap(({ share, on }) =>
    on
      ? [
          {
            name: `${formats.share(share)}: ${formats.localDay(on)}`,
            at: Date.parse(on),
            value: share,
          },
        ]
      : [],
  );
  return (
    <div>
      <h4>
        {set.finishName}
        <BasisButton of={`${title}: ${set.finishName}`} basis={finish.basis} />
      </h4>
      <p>{said}</p>
      {weeksAhead.length > 1 && (
        <LineChart
          name={`${title}: ${set.finishName}`}
          heard={`${set.chanceLine}. ${said}`}
          lines={[
            {
              name: set.chanceLine,
              look: 'main',
              points: weeksAhead.map(({ on, finishedShare }) => ({
                at: Date.parse(on),
                value: finishedShare,
              })),
            },
          ]}
          marks={marks}
          writeTime={(at) => formats.localDay(new Date(at).toISOString().slice(0, 10))}
          writeValue={(value) => formats.share(value)}
        />
      )}
    </div>
  );
}
