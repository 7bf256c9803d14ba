import { useTexts } from '../texts/textsContext.js';
import styles from './FileDrop.module.css';

/** A file is chosen, or dropped here. */
export function FileDrop({
  label,
  accept,
  fileName,
  take,
}: {
  label: string;
  accept: string;
  /** What was taken; null before. */
  fileName: string | null;
  take: (file: File) => void;
}) {
  const { bringList } = useTexts();
  return (
    <label
      className={styles['drop']}
      onDragOver={(event) => {
        event.preventDefault();
      }}
      onDrop={(event) => {
        event.preventDefault();
        const [file] = event.dataTransfer.files;
        if (file) take(file);
      }}
    >
      <span>{label}</span>
      <input
        type="file"
        accept={accept}
        onClick={(event) => {
          // So that the same file, mended, can be chosen once more.
          event.currentTarget.value = '';
        }}
        onChange={(event) => {
          const file = event.target.files?.[0];
          if (file) take(file);
        }}
      />
      {fileName !== null && <span>{bringList.taken(fileName)}</span>}
    </label>
  );
}
