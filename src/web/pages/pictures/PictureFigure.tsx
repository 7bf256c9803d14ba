import type { ReactNode } from 'react';
import type { ShownPictureFragment } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './PicturesPage.module.css';

/** A photograph with what is to be seen on it and when it was taken; a click shows it large. */
export function PictureFigure({
  picture,
  side,
  children,
}: {
  picture: ShownPictureFragment;
  /** Which one of a pair. */
  side?: string;
  children?: ReactNode;
}) {
  const { pictures, words } = useTexts();
  const formats = useFormats();
  const { caption, role, file, recordedAt } = picture;
  // What the camera's clock wrote has no zone of its own: its day is shown as it stands.
  const day = file.takenAt
    ? pictures.taken(formats.localDay(file.takenAt.slice(0, 10)))
    : pictures.kept(formats.day(recordedAt));
  const shows = [side ?? words.attachmentRole[role], caption].filter(Boolean).join(': ');
  return (
    <figure className={styles['figure']}>
      <a href={file.larger ?? file.path} target="_blank" rel="noreferrer">
        <img src={file.smaller ?? ''} alt={`${shows}, ${pictures.opensLarge}`} loading="lazy" />
      </a>
      <figcaption>
        {shows}
        <span className={styles['soft']}>{day}</span>
      </figcaption>
      {children}
    </figure>
  );
}
