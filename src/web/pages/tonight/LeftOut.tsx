import { Link } from '@tanstack/react-router';
import type { ReadinessLevel, TonightRigFragment } from '../../gql/graphql.js';
import { Lamp } from '../../parts/Lamp.js';
import { Sheet } from '../../parts/Sheet.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './LeftOut.module.css';

const nearest = ['ON_AIR_READY', 'CHECKS_DUE', 'NOT_READY', 'DO_NOT_CONNECT'] as const;

/** The sets that stay silent, the nearest to the air first, and what each lacks. */
export function LeftOut({
  title,
  leftOut,
}: {
  title: string;
  leftOut: readonly {
    rig: TonightRigFragment;
    level: ReadinessLevel;
    reasons: readonly string[];
  }[];
}) {
  const { tonight } = useTexts();
  if (leftOut.length === 0) return null;
  const sorted = [...leftOut].sort(
    (one, other) => nearest.indexOf(one.level) - nearest.indexOf(other.level),
  );
  return (
    <div className={styles['space']}>
      <Sheet title={title}>
        <ul className={styles['list']}>
          {sorted.map(({ rig, level, reasons }) => (
            <li key={rig.id}>
              <div className={styles['head']}>
                <Link to="/sets/$number" params={{ number: rig.inventoryNumber }}>
                  {rig.inventoryNumber} {rig.name}
                </Link>
                <Lamp level={level} />
              </div>
              <p {...fromApi}>{reasons[0]}</p>
              {reasons.length > 1 && (
                <details>
                  <summary>{tonight.moreReasons(reasons.length - 1)}</summary>
                  <ul>
                    {reasons.slice(1).map((reason) => (
                      <li key={reason} {...fromApi}>
                        {reason}
                      </li>
                    ))}
                  </ul>
                </details>
              )}
            </li>
          ))}
        </ul>
      </Sheet>
    </div>
  );
}
