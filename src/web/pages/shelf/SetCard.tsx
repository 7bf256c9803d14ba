import { Link } from '@tanstack/react-router';
import { useFormats } from '../../locale/useFormats.js';
import { Lamp } from '../../parts/Lamp.js';
import { Meter } from '../../parts/Meter.js';
import { SetPicture } from '../../parts/SetPicture.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import type { ShelfRow } from './ShelfPage.js';
import styles from './SetCard.module.css';

/** One set on the shelf: picture, name, standing, what is done and what is left. */
export function SetCard({ rig }: { rig: ShelfRow }) {
  const { shelf } = useTexts();
  const formats = useFormats();
  const { share } = rig.completion;
  const first = rig.readiness.blockers[0]?.message;
  return (
    <div role="listitem" className={styles['card']}>
      <SetPicture number={rig.inventoryNumber} src={rig.coverPicture?.file.picturePath} />
      <h2 className={styles['name']}>
        <Link to="/sets/$number" params={{ number: rig.inventoryNumber }}>
          <span className={styles['number']}>{rig.inventoryNumber}</span> {setName(rig)}
        </Link>
      </h2>
      <Lamp level={rig.readiness.level} />
      {first && (
        <p className={styles['why']} {...fromApi}>
          {first}
        </p>
      )}
      <Meter
        share={share}
        words={share === null ? shelf.noTasks : shelf.done(formats.share(share))}
      />
      <p className={styles['soft']}>
        {shelf.given(formats.hours(rig.hours.hours))} · {rig.place?.name ?? shelf.unplaced}
      </p>
    </div>
  );
}

/** Its own name; else what its model is called. */
export function setName({ name, model }: Pick<ShelfRow, 'name' | 'model'>): string {
  return name ?? (model ? `${model.maker} ${model.designation}` : '–');
}
