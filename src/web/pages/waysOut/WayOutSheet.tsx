import type { ReactNode } from 'react';
import type { WaysOutQuery } from '../../gql/graphql.js';
import { CopyText } from '../../parts/CopyText.js';
import { Sheet } from '../../parts/Sheet.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './WaysOutPage.module.css';

export type ShownWay = WaysOutQuery['waysOut']['ways'][number];

/** One way out: what it gives, by which standard, and commands that ask for it. */
export function WayOutSheet({ way, children }: { way: ShownWay; children?: ReactNode }) {
  const { waysOut } = useTexts();
  return (
    <Sheet title={waysOut.way[way.scope].title}>
      <p>{waysOut.way[way.scope].what}</p>
      <dl className={styles['facts']}>
        <dt>{waysOut.address}</dt>
        <dd>
          <code>{way.path}</code>
        </dd>
        <dt>{waysOut.standard}</dt>
        <dd>{way.standard}</dd>
        <dt>{waysOut.mediaType}</dt>
        <dd>
          <code>{way.mediaType}</code>
        </dd>
      </dl>
      {way.examples.map(({ kind, command, subscribeTo }) => (
        <div key={kind} className={styles['example']}>
          <h3>{waysOut.example[kind]}</h3>
          <CopyText name={waysOut.example[kind]} text={command} />
          {subscribeTo !== null && <p className={styles['danger']}>{waysOut.inAddress}</p>}
        </div>
      ))}
      {children}
    </Sheet>
  );
}
