import styles from './SetPicture.module.css';

/** A set's first photograph; without one a plain card with its number, as on a shelf label. */
export function SetPicture({
  src,
  number,
  alt = '',
}: {
  src?: string | null | undefined;
  number: string;
  alt?: string;
}) {
  if (src) return <img className={styles['picture']} src={src} alt={alt} loading="lazy" />;
  return (
    <span className={styles['label']} aria-hidden="true">
      {number}
    </span>
  );
}
