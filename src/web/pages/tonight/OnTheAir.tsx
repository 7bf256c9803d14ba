import { Link } from '@tanstack/react-router';
import type { AccessoryRole, TonightRigFragment } from '../../gql/graphql.js';
import { SetPicture } from '../../parts/SetPicture.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './OnTheAir.module.css';

interface ServedSet {
  rig: TonightRigFragment;
  /** Its bands, or its power on the one asked for. */
  what: string;
  servedBy: readonly {
    role: AccessoryRole;
    accessory: { id: string; inventoryNumber: string; name: string | null };
  }[];
  cautions: readonly string[];
}

/** The sets that may go on the air, each with what serves it. */
export function OnTheAir({ sets }: { sets: readonly ServedSet[] }) {
  const { tonight, words } = useTexts();
  return (
    <ul className={styles['sets']}>
      {sets.map(({ rig, what, servedBy, cautions }) => (
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
            <p>{what}</p>
            {servedBy.map(({ role, accessory }) => (
              <p key={accessory.id + role}>
                {words.role[role]}:{' '}
                <Link to="/sets/$number" params={{ number: accessory.inventoryNumber }}>
                  {[accessory.inventoryNumber, accessory.name].filter(Boolean).join(' ')}
                </Link>
              </p>
            ))}
            {cautions.length > 0 && (
              <details>
                <summary>{tonight.mind(cautions.length)}</summary>
                <ul>
                  {cautions.map((caution) => (
                    <li key={caution} {...fromApi}>
                      {caution}
                    </li>
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
