import type { ShownProblem } from '../../api/useSend.js';
import type { PositionState, Zone } from '../../gql/graphql.js';
import { useTexts } from '../../texts/textsContext.js';
import { FitOutTicks } from './FitOutTicks.js';
import type { DraftFinding, IntakeDraft } from './intakeDraft.js';
import type { IntakeItem } from './IntakeWalkPage.js';
import { ZoneFindings } from './ZoneFindings.js';

/** One zone: what should be there, and what is seen. */
export function ZoneLeaf({
  zone,
  item,
  draft,
  order,
  problems,
  onTick,
  onFindings,
}: {
  zone: Zone;
  item: IntakeItem;
  draft: IntakeDraft;
  order: readonly string[];
  problems: readonly ShownProblem[];
  onTick: (checks: Readonly<Partial<Record<string, PositionState>>>) => void;
  onFindings: (change: (before: readonly DraftFinding[]) => readonly DraftFinding[]) => void;
}) {
  const { intake } = useTexts();
  const places = item.fitOut.filter(({ position }) => position.zone === zone);
  return (
    <>
      {places.length > 0 ? (
        <>
          <h3>{intake.fitOut}</h3>
          <FitOutTicks
            places={places}
            ticks={draft.checks}
            order={order}
            problems={problems}
            onTick={onTick}
          />
        </>
      ) : (
        <p>{item.fitOut.length === 0 ? intake.noFitOut : intake.nothingExpected}</p>
      )}
      <ZoneFindings
        zone={zone}
        findings={draft.findings}
        problems={problems}
        onChange={onFindings}
      />
    </>
  );
}
