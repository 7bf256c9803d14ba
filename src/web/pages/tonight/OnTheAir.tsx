import { Link } from '@tanstack/react-router';
import { SetPicture } from '../../parts/SetPicture.js';
import { useTexts } from '../../texts/textsContext.js';
import { bandsOf } from './bandsOf.js';
import type { TonightShack } from './TonightPage.js';
import styles from './OnTheAir.module.css';

/** The sets that may go on the air at once, each with what serves it. */
export function OnTheAir({ shack }: { shack: TonightShack }) {
  const { tonight, words } = useTexts();
  return (
    <ul className={styles['sets']}>
      {shack.served.map(({ rig, servedBy, cautions }) => (
        <li key={rig.id} className={styles['set']}>
          <div className={styles['picture']}>
            <SetPicture number={rig.inventoryNumber} src={rig.coverPicture?.file.picturePath} />
          </div>
          <div className={styles['words']}>
            <h3>
              <Link to="/sets/$number" params={{ number: rig.inventoryNumber }}>
                {rig.inventoryNumber} {rig.name}
              </Link>
            </h3>
            <p>{bandsOf(rig.model?.capabilities ?? []) || tonight.noBands}</p>
            {servedBy.map(({ role, accessory }) => (
              <p key={accessory.id + role}>
                {words.role[role]}:{' '}
                <Link to="/sets/$number" params={{ number: accessory.inventoryNumber }}>
                  {accessory.inventoryNumber} {accessory.name}
                </Link>
              </p>
            ))}
            {cautions.length > 0 && (
              <details>
                <summary>{tonight.mind(cautions.length)}</summary>
                <ul>
                  {cautions.map((caution) => (
                    <li key={caution}>{caution}</li>
                  ))}
                </ul>
              </details>
            )}
          </div>
        </li>
      ))}
    </ul>
  );
}
