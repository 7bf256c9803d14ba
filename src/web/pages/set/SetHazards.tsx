import { useEffect, useRef, useState } from 'react';
import type { ShownHazardFragment } from '../../gql/graphql.js';
import { classNames } from '../../parts/classNames.js';
import { Opener } from '../../parts/Opener.js';
import { hasDraft } from '../../drafts/keptDrafts.js';
import { useTexts } from '../../texts/textsContext.js';
import { OneHazard } from './hazards/OneHazard.js';
import { raisePlace, RaiseHazard } from './hazards/RaiseHazard.js';
import styles from './SetHazards.module.css';

/** What can hurt, before anything else; hazards not cleared come first and are open. */
export function SetHazards({
  item,
}: {
  item: { id: string; hazards: readonly ShownHazardFragment[] };
}) {
  const { set, bench, prove } = useTexts();
  const [said, setSaid] = useState('');
  const status = useRef<HTMLParagraphElement>(null);
  // The form that was sent is gone: who works by keyboard goes on from what came of it.
  useEffect(() => {
    if (said !== '') status.current?.focus();
  }, [said]);
  const { hazards } = item;
  return (
    <section className={classNames(styles['hazards'], hazards.length === 0 && styles['none'])}>
      <h2>{set.hazards}</h2>
      {hazards.length === 0 && <p>{bench.noHazards}</p>}
      {hazards.map((hazard) => (
        <OneHazard key={hazard.id} hazard={hazard} onDone={setSaid} />
      ))}
      <p role="status" tabIndex={-1} ref={status} className={styles['said']}>
        {said}
      </p>
      <Opener key={item.id} label={prove.raise} isOpenAtFirst={hasDraft(raisePlace(item.id))}>
        {(close) => (
          <RaiseHazard
            item={item}
            onDone={(words) => {
              close();
              setSaid(words);
            }}
          />
        )}
      </Opener>
    </section>
  );
}
