import { useFormats } from '../../locale/useFormats.js';
import { useTexts } from '../../texts/textsContext.js';
import type { ShownSet } from './SetPage.js';
import styles from './SetHazards.module.css';

/** What can hurt, before anything else; hazards not cleared come first and are open. */
export function SetHazards({ item }: { item: Pick<ShownSet, 'hazards'> }) {
  const { set } = useTexts();
  if (item.hazards.length === 0) return null;
  return (
    <section className={styles['hazards']}>
      <h2>{set.hazards}</h2>
      {item.hazards.map((hazard) => (
        <Hazard key={hazard.id} hazard={hazard} />
      ))}
    </section>
  );
}

function Hazard({ hazard }: { hazard: ShownSet['hazards'][number] }) {
  const { set, words } = useTexts();
  const formats = useFormats();
  const { guide } = hazard;
  const standing = guide.belongsToDesign
    ? set.ofTheDesign
    : hazard.clearedAt
      ? set.cleared(formats.day(hazard.clearedAt))
      : set.notCleared;
  return (
    <details open={hazard.clearedAt === null && !guide.belongsToDesign}>
      <summary>
        <strong>{words.hazard[hazard.kind]}</strong> – {standing}
      </summary>
      {hazard.note && <p>{hazard.note}</p>}
      <ul>
        {hazard.cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <p>
        <strong>{set.protection}:</strong> {guide.protection.join(' ')}
      </p>
      <p>
        <strong>{set.clearedBy}:</strong> {hazard.clearedByCheck ?? guide.clearedBy}
      </p>
      <p>{guide.advice}</p>
      <p className={styles['source']}>
        {set.source}: {hazard.source}
      </p>
    </details>
  );
}
