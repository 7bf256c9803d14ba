import type { ShownPictureFragment } from '../../gql/graphql.js';
import { Sheet } from '../../parts/Sheet.js';
import { useTexts } from '../../texts/textsContext.js';
import { PictureFigure } from './PictureFigure.js';
import styles from './PicturesPage.module.css';

/** What shows the same before and after the work, side by side. */
export function PicturePairs({ pictures }: { pictures: readonly ShownPictureFragment[] }) {
  const { pictures: texts } = useTexts();
  const pairs = pictures.flatMap((after) => {
    const before = pictures.find(({ id }) => id === after.before?.id);
    return before ? [{ before, after }] : [];
  });
  if (pairs.length === 0) return null;
  return (
    <div className={styles['space']}>
      <Sheet title={texts.pairs}>
        <ul className={styles['pairs']}>
          {pairs.map(({ before, after }) => (
            <li key={after.id} className={styles['pair']}>
              <PictureFigure picture={before} side={texts.before} />
              <PictureFigure picture={after} side={texts.after} />
            </li>
          ))}
        </ul>
      </Sheet>
    </div>
  );
}
