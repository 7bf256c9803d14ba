import { useState } from 'react';
import { useSend } from '../../api/useSend.js';
import { TakeBackReadTokenDocument, type ShownTokenFragment } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { Button } from '../../parts/Button.js';
import { classNames } from '../../parts/classNames.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './WaysOutPage.module.css';

/** One token: what it opens and shows, whether it is used, and how it is taken back. */
export function TokenLine({ token }: { token: ShownTokenFragment }) {
  const { waysOut } = useTexts();
  const formats = useFormats();
  const [isAsked, setIsAsked] = useState(false);
  const { send, problems, isSending } = useSend(
    TakeBackReadTokenDocument,
    ({ takeBackReadToken }) => takeBackReadToken,
  );
  const { id, version, name, scopes, shows, madeAt, lastDay, lastUsedOn, takenBackAt } = token;
  const times = [
    waysOut.madeOn(formats.day(madeAt)),
    lastUsedOn === null ? waysOut.neverUsed : waysOut.lastUsed(formats.localDay(lastUsedOn)),
    lastDay !== null && waysOut.until(formats.localDay(lastDay)),
    takenBackAt !== null && waysOut.takenBack(formats.day(takenBackAt)),
  ].filter((line) => line !== false);
  return (
    <li className={classNames(takenBackAt !== null && styles['gone'])}>
      <h3>{name}</h3>
      <p>{waysOut.opensList(scopes.map((scope) => waysOut.scope[scope]).join(', '))}</p>
      <p>
        {shows.length === 0
          ? waysOut.showsNothing
          : waysOut.showsList(shows.map((each) => waysOut.allowance[each]).join(', '))}
      </p>
      <p className={styles['soft']}>{times.join(' · ')}</p>
      {takenBackAt === null && (
        <div className={styles['actions']}>
          {isAsked ? (
            <>
              <Button
                disabled={isSending}
                onClick={() => void send({ input: { tokenId: id, version } })}
              >
                {waysOut.takeBackNow(name)}
              </Button>
              <Button
                weight="quiet"
                autoFocus
                onClick={() => {
                  setIsAsked(false);
                }}
              >
                {waysOut.keep}
              </Button>
            </>
          ) : (
            <Button
              aria-label={waysOut.takeBackWhich(name)}
              onClick={() => {
                setIsAsked(true);
              }}
            >
              {waysOut.takeBack}
            </Button>
          )}
        </div>
      )}
      <ProblemsElsewhere problems={problems} shown={[]} />
    </li>
  );
}
