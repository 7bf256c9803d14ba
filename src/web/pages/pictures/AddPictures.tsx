import { useState } from 'react';
import { Field } from '../../parts/Field.js';
import { PhotoButton } from '../../parts/PhotoButton.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './PicturesPage.module.css';

/** Takes photographs in, with what they show; each is kept as it comes. */
export function AddPictures({ itemId, onKept }: { itemId: string; onKept: () => void }) {
  const { bench, pictures } = useTexts();
  const [caption, setCaption] = useState('');
  const [kept, setKept] = useState<string | null>(null);
  return (
    <div className={styles['add']} data-print="no">
      <Field label={bench.caption}>
        <input
          value={caption}
          onChange={({ target }) => {
            setCaption(target.value);
          }}
        />
      </Field>
      <PhotoButton
        label={pictures.add}
        toId={itemId}
        caption={caption.trim()}
        onKept={({ name }) => {
          setKept(name);
          setCaption('');
          onKept();
        }}
      />
      <p role="status">{kept !== null && bench.pictureKept(kept)}</p>
    </div>
  );
}
