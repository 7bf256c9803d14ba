import { useEffect, useRef } from 'react';
import type { TokenScope } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { CopyText } from '../../parts/CopyText.js';
import { useTexts } from '../../texts/textsContext.js';
import type { ShownWay } from './WayOutSheet.js';
import styles from './WaysOutPage.module.css';

export interface Made {
  token: string;
  name: string;
  scopes: readonly TokenScope[];
}

/** Asks for the token without showing it, so that no history of commands holds it. */
const takeIn = 'read -rs REGLOW_TOKEN && export REGLOW_TOKEN';

/** A token in the one moment in which it can be seen. */
export function MadeToken({
  made: { token, name, scopes },
  ways,
  put,
}: {
  made: Made;
  ways: readonly ShownWay[];
  put: () => void;
}) {
  const { waysOut } = useTexts();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
  }, []);
  const subscriptions = ways
    .filter(({ scope }) => scopes.includes(scope))
    .flatMap(({ examples }) => examples)
    .filter(({ subscribeTo }) => subscribeTo !== null);
  return (
    <div className={styles['made']}>
      <h3 ref={heading} tabIndex={-1}>
        {waysOut.madeTitle(name)}
      </h3>
      <p>{waysOut.onceOnly}</p>
      <CopyText name={waysOut.theToken} text={token} />
      <p>{waysOut.takeIn}</p>
      <CopyText name={waysOut.theCommand} text={takeIn} />
      {subscriptions.map(({ kind, subscribeTo }) => (
        <div key={kind} className={styles['example']}>
          <h4>{waysOut.example[kind]}</h4>
          <CopyText
            name={waysOut.addressOf(waysOut.example[kind])}
            text={(subscribeTo ?? '').replace('$REGLOW_TOKEN', token)}
          />
        </div>
      ))}
      {subscriptions.length > 0 && <p className={styles['danger']}>{waysOut.inAddress}</p>}
      <Button weight="main" onClick={put}>
        {waysOut.putAway}
      </Button>
    </div>
  );
}
