import type { ShownHazardFragment } from '../../../gql/graphql.js';
import { hasDraft } from '../../../drafts/keptDrafts.js';
import { useFormats } from '../../../locale/useFormats.js';
import { fromApi } from '../../../texts/fromApi.js';
import { useTexts } from '../../../texts/textsContext.js';
import { ClearHazard, clearPlace } from './ClearHazard.js';
import { CorrectHazard } from './CorrectHazard.js';
import styles from '../SetHazards.module.css';

/** One thing that can hurt: its cautions first, then the steps that bear on it. */
export function OneHazard({
  hazard,
  onDone,
}: {
  hazard: ShownHazardFragment;
  onDone: (words: string) => void;
}) {
  const { set, prove, words } = useTexts();
  const formats = useFormats();
  const { guide } = hazard;
  // What was typed here of one that somebody else cleared is not to be overlooked.
  const isOpen =
    !guide.belongsToDesign && (hazard.clearedAt === null || hasDraft(clearPlace(hazard.id)));
  const standing = guide.belongsToDesign
    ? set.ofTheDesign
    : hazard.clearedAt
      ? set.cleared(formats.day(hazard.clearedAt))
      : set.notCleared;
  return (
    <details open={isOpen}>
      <summary>
        <strong>{words.hazard[hazard.kind]}</strong> – {standing}
      </summary>
      {hazard.note && <p>{hazard.note}</p>}
      <ul>
        {hazard.cautions.map((caution) => (
          <li key={caution} {...fromApi}>
            {caution}
          </li>
        ))}
      </ul>
      <p>
        <strong>{set.protection}:</strong> <span {...fromApi}>{guide.protection.join(' ')}</span>
      </p>
      {guide.belongsToDesign ? (
        <p>{prove.designStays}</p>
      ) : (
        <p>
          <strong>{set.clearedBy}:</strong>{' '}
          {hazard.clearedByCheck ? (
            [hazard.clearedByCheck, hazard.clearedBy?.name].filter(Boolean).join(' – ')
          ) : (
            <span {...fromApi}>{guide.clearedBy}</span>
          )}
        </p>
      )}
      <p {...fromApi}>{guide.advice}</p>
      <p className={styles['source']}>
        {set.source}: <span {...fromApi}>{hazard.source}</span>
      </p>
      <div className={styles['steps']}>
        {!guide.belongsToDesign && <ClearHazard hazard={hazard} onDone={onDone} />}
        <CorrectHazard hazard={hazard} onDone={onDone} />
      </div>
    </details>
  );
}
