import type { ShownPictureFragment } from '../../gql/graphql.js';
import { useTexts } from '../../texts/textsContext.js';
import { PictureFigure } from './PictureFigure.js';
import { PictureWords } from './PictureWords.js';
import styles from './PicturesPage.module.css';

/** All photographs in their order, the cover named; what is said of each can be changed. */
export function PictureWall({
  pictures,
  coverId,
  fetchAgain,
}: {
  pictures: readonly ShownPictureFragment[];
  coverId: string | null;
  fetchAgain: () => void;
}) {
  const { pictures: texts } = useTexts();
  const before = pictures.filter(({ role }) => role === 'BEFORE');
  const first = Math.min(...pictures.map(({ ordinal }) => ordinal));
  return (
    <ul className={styles['wall']}>
      {pictures.map((picture) => (
        <li key={picture.id} className={styles['card']}>
          <PictureFigure picture={picture}>
            {picture.id === coverId && <p className={styles['cover']}>{texts.cover}</p>}
          </PictureFigure>
          <details data-print="no">
            <summary>{texts.change}</summary>
            <PictureWords
              picture={picture}
              before={before.filter(({ id }) => id !== picture.id)}
              ordinalOfCover={picture.id === coverId ? null : first - 1}
              fetchAgain={fetchAgain}
            />
          </details>
        </li>
      ))}
    </ul>
  );
}
