import { useState } from 'react';
import { useDraft } from '../../drafts/useDraft.js';
import { Field } from '../../parts/Field.js';
import { PhotoButton } from '../../parts/PhotoButton.js';
import { useTexts } from '../../texts/textsContext.js';
import type { BenchItem } from './BenchPage.js';
import styles from './BenchEntry.module.css';

/** A picture of the set, with a line on what it shows. */
export function PhotoEntry({ item }: { item: BenchItem }) {
  const { bench } = useTexts();
  const { draft, change, clear } = useDraft(`bench.photo.${item.id}`, { caption: '' });
  const [kept, setKept] = useState<readonly string[]>([]);
  return (
    <div className={styles['form']}>
      <Field label={bench.caption}>
        <input
          value={draft.caption}
          onChange={(event) => {
            change({ caption: event.target.value });
          }}
        />
      </Field>
      <PhotoButton
        label={bench.addPicture}
        toId={item.id}
        caption={draft.caption.trim()}
        onKept={({ name }) => {
          setKept((before) => [...before, name]);
          clear();
        }}
      />
      <div role="status" className={styles['kept']}>
        {kept.map((name, index) => (
          <p key={name + String(index)}>{bench.pictureKept(name)}</p>
        ))}
      </div>
    </div>
  );
}
