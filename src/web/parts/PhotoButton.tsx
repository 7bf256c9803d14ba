import { useState } from 'react';
import { uploadFile } from '../api/uploadFile.js';
import { useTexts } from '../texts/textsContext.js';
import { Button, buttonClass } from './Button.js';
import { classNames } from './classNames.js';
import styles from './PhotoButton.module.css';

/** Opens the camera, or the folder where there is none, and sends each picture at once. */
export function PhotoButton({
  label,
  toId,
  caption,
  onKept,
}: {
  label: string;
  /** What it shows; left out, the picture is only kept. */
  toId?: string;
  caption?: string;
  onKept: (file: { id: string; name: string }) => void;
}) {
  const { frame } = useTexts();
  const [waiting, setWaiting] = useState(0);
  const [failed, setFailed] = useState<readonly { file: File; why: string }[]>([]);
  const sendAll = async (files: readonly File[]) => {
    setFailed([]);
    setWaiting(files.length);
    for (const file of files) {
      const why = await sendOne(file);
      if (why !== null) setFailed((before) => [...before, { file, why }]);
      setWaiting((count) => count - 1);
    }
  };
  const sendOne = async (file: File): Promise<string | null> => {
    try {
      const answer = await uploadFile(file, {
        ...(toId !== undefined && { toId }),
        ...(caption !== undefined && { caption }),
      });
      if (!answer.file) return answer.problems.map(({ message }) => message).join(' ');
      onKept({ id: answer.file.id, name: file.name });
      return null;
    } catch {
      return frame.failedNoServer;
    }
  };
  return (
    <div className={styles['photo']}>
      <label className={classNames(buttonClass(), styles['opener'])}>
        {label}
        <input
          type="file"
          accept="image/*"
          capture="environment"
          multiple
          className="only-heard"
          onChange={(event) => {
            void sendAll([...(event.target.files ?? [])]);
            event.target.value = '';
          }}
        />
      </label>
      <span role="status">{waiting > 0 && frame.sendingPictures(waiting)}</span>
      {failed.length > 0 && (
        <div role="alert" className={styles['failed']}>
          {failed.map(({ file, why }) => (
            <p key={file.name + why}>
              {file.name}: {why}
            </p>
          ))}
          <Button onClick={() => void sendAll(failed.map(({ file }) => file))}>
            {frame.tryAgain}
          </Button>
        </div>
      )}
    </div>
  );
}
