import { useTexts } from '../texts/textsContext.js';
import styles from './Loading.module.css';

/** Shown while the first answer is on its way; late enough not to flicker. */
export function Loading() {
  const { frame } = useTexts();
  return (
    <p className={styles['loading']} role="status">
      {frame.loading}
    </p>
  );
}
