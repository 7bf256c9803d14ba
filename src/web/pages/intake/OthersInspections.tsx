import type { InspectionOfOthersFragment } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { Button } from '../../parts/Button.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './OthersInspections.module.css';

/** Somebody looked the same thing over in the meantime: who, when, and what they found. */
export function OthersInspections({
  others,
  note,
}: {
  others: readonly InspectionOfOthersFragment[];
  note: () => void;
}) {
  const { intake, words } = useTexts();
  const formats = useFormats();
  return (
    <div role="status">
      {others.length > 0 && (
        <section className={styles['others']}>
          <h2>{intake.othersTitle}</h2>
          {others.map(({ id, inspectedAt, inspector, note: remark, findings, fitOutChecks }) => (
            <div key={id}>
              <p>
                <strong>
                  {intake.otherLooked(
                    inspector?.name ?? intake.somebody,
                    formats.minute(inspectedAt),
                  )}
                </strong>
              </p>
              {remark && <p>{remark}</p>}
              <ul>
                {findings.map((finding) => (
                  <li key={finding.id}>
                    {words.zone[finding.zone]}, {words.severity[finding.severity]}: {finding.note}
                  </li>
                ))}
                {fitOutChecks.map(({ id: checkId, position, state }) => (
                  <li key={checkId}>
                    {position.designator}: {words.positionState[state]}
                  </li>
                ))}
              </ul>
            </div>
          ))}
          <p>{intake.othersHelp}</p>
          <div>
            <Button onClick={note}>{intake.othersNoted}</Button>
          </div>
        </section>
      )}
    </div>
  );
}
