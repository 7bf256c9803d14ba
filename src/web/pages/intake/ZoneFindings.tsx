import type { ShownProblem } from '../../api/useSend.js';
import type { Zone } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { FindingFields } from '../../parts/FindingFields.js';
import { PhotoButton } from '../../parts/PhotoButton.js';
import { useTexts } from '../../texts/textsContext.js';
import type { DraftFinding } from './intakeDraft.js';
import styles from './IntakeWalk.module.css';

/** What is seen in one zone, each finding with its pictures. */
export function ZoneFindings({
  zone,
  findings,
  onChange,
  problems,
}: {
  zone: Zone;
  /** Of all zones: problems name them by their place in this list. */
  findings: readonly DraftFinding[];
  onChange: (change: (before: readonly DraftFinding[]) => readonly DraftFinding[]) => void;
  problems: readonly ShownProblem[];
}) {
  const { intake } = useTexts();
  const here = findings.flatMap((finding, index) => (finding.zone === zone ? [index] : []));
  const changeOne = (index: number, changes: (before: DraftFinding) => Partial<DraftFinding>) => {
    onChange((before) =>
      before.map((one, at) => (at === index ? { ...one, ...changes(one) } : one)),
    );
  };
  return (
    <>
      <h3>{intake.findings}</h3>
      {here.map((index, ordinal) => {
        const finding = findings[index];
        if (!finding) return null;
        return (
          <fieldset key={index} className={styles['finding']}>
            <legend>{intake.finding(ordinal + 1)}</legend>
            <FindingFields
              name={String(index)}
              isZoneFixed
              finding={finding}
              problems={problems}
              path={['findings', String(index)]}
              onChange={(changes) => {
                changeOne(index, () => changes);
              }}
            />
            <div className={styles['buttons']}>
              <PhotoButton
                label={intake.picture}
                onKept={({ id }) => {
                  changeOne(index, ({ fileIds }) => ({ fileIds: [...fileIds, id] }));
                }}
              />
              <span role="status">
                {finding.fileIds.length > 0 && intake.pictures(finding.fileIds.length)}
              </span>
              <Button
                weight="quiet"
                onClick={() => {
                  onChange((before) => before.filter((_one, at) => at !== index));
                }}
              >
                {intake.drop}
              </Button>
            </div>
          </fieldset>
        );
      })}
      <div>
        <Button
          onClick={() => {
            const added = { zone, severity: 'MINOR' as const, note: '', fileIds: [] };
            onChange((before) => [...before, added]);
          }}
        >
          {intake.addFinding}
        </Button>
      </div>
    </>
  );
}
