import { useFormats } from '../../locale/useFormats.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { LineChart } from '../../parts/LineChart.js';
import { useTexts } from '../../texts/textsContext.js';
import { burnUpShape, type Outlook } from './burnUpShape.js';

/** Earned and spent over time, and how far it comes at the pace really kept. */
export function BurnUp({ of, title }: { of: Outlook; title: string }) {
  const { set } = useTexts();
  const formats = useFormats();
  const { lines, band, last } = burnUpShape(of, {
    earned: set.earnedLine,
    spent: set.spentLine,
    scope: set.scopeLine,
    planned: set.plannedLine,
    ahead: set.aheadLine,
    band: set.aheadBand,
  });
  if (!last || !lines.some(({ points }) => points.length > 1)) return null;
  const { basis, hours } = of.earnedValue;
  const today = { name: set.today, at: Date.parse(last.on) };
  // Without new estimates the two are one; apart, the band ends at what can be earned.
  const isRevised = Math.abs(hours.budgetHours - last.scopeHours) >= 0.05;
  return (
    <div>
      <h4>
        {set.overTime}
        <BasisButton of={`${title}: ${set.overTime}`} basis={basis} />
      </h4>
      <LineChart
        name={`${title}: ${set.overTime}`}
        heard={set.burnUpHeard(
          formats.hours(last.earnedHours),
          formats.hours(hours.budgetHours),
          formats.hours(last.spentHours),
        )}
        lines={lines}
        band={band}
        levels={
          band && isRevised
            ? [{ name: set.wholeBudget, value: hours.budgetHours, isLimit: false }]
            : []
        }
        marks={band ? [today] : []}
        writeTime={(at) => formats.localDay(new Date(at).toISOString().slice(0, 10))}
        writeValue={(value) => formats.number(value, 1)}
      />
    </div>
  );
}
