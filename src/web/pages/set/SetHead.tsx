import { Link } from '@tanstack/react-router';
import { useFormats } from '../../locale/useFormats.js';
import { Lamp } from '../../parts/Lamp.js';
import { SetPicture } from '../../parts/SetPicture.js';
import { useTexts } from '../../texts/textsContext.js';
import type { ShownSet } from './SetPage.js';
import styles from './SetHead.module.css';

/** Picture, name and standing: what one sees first. */
export function SetHead({ item }: { item: ShownSet }) {
  const { set, shelf, pictures, change, bringUp } = useTexts();
  const formats = useFormats();
  const model = item.model && `${item.model.maker} ${item.model.designation}`;
  const known = [
    model,
    item.madeEdtf && set.made(item.madeEdtf),
    item.serialNumber && set.serial(item.serialNumber),
    item.place?.name ?? shelf.unplaced,
  ].filter(Boolean);
  return (
    <header className={styles['head']}>
      <div className={styles['picture']}>
        <SetPicture
          number={item.inventoryNumber}
          src={item.coverPicture?.file.picturePath}
          alt={item.coverPicture?.caption ?? ''}
        />
      </div>
      <div className={styles['words']}>
        <h1>
          <span className={styles['number']}>{item.inventoryNumber}</span>{' '}
          {item.name ?? model ?? ''}
        </h1>
        <Lamp level={item.readiness.level} isLarge />
        <p className={styles['known']}>{known.join(' · ')}</p>
        {item.note && <p>{item.note}</p>}
        {item.retiredAt && (
          <p>
            <strong>{set.gone(formats.day(item.retiredAt))}</strong> {item.retiredReason}
          </p>
        )}
        <p className={styles['ways']} data-print="no">
          <Link to="/sets/$number/pictures" params={{ number: item.inventoryNumber }}>
            {pictures.toPictures}
          </Link>
          <Link to="/sets/$number/change" params={{ number: item.inventoryNumber }}>
            {change.toChange}
          </Link>
          <Link to="/bench/$number" params={{ number: item.inventoryNumber }}>
            {set.toBench}
          </Link>
          <Link to="/sets/$number/bring-up" params={{ number: item.inventoryNumber }}>
            {bringUp.toBringUp}
          </Link>
          <Link to="/intake/$number" params={{ number: item.inventoryNumber }}>
            {set.toIntake}
          </Link>
        </p>
      </div>
    </header>
  );
}
