import { useFormats } from '../../locale/useFormats.js';
import { Button } from '../../parts/Button.js';
import { Loading } from '../../parts/Loading.js';
import { Notice } from '../../parts/Notice.js';
import { useTitle } from '../../parts/useTitle.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { useFinds } from './useFinds.js';
import { useWanted } from './useWanted.js';
import { WantedLine } from './WantedLine.js';
import styles from './WantedPage.module.css';

/** The list for the fair: in big type, without a connection, and “bought it” in two touches. */
export function WantedPage() {
  const { wanted, frame } = useTexts();
  const formats = useFormats();
  useTitle(wanted.title);
  const { list, isKept, isFailed, fetchAgain } = useWanted();
  const finds = useFinds();
  const wants = list?.wantedList.wants ?? [];
  return (
    <>
      <div className={styles['head']}>
        <h1>{wanted.title}</h1>
        <Button
          onClick={() => {
            window.print();
          }}
          data-print="no"
        >
          {wanted.print}
        </Button>
      </div>
      {isKept && list && (
        <p className={styles['kept']}>{wanted.keptFrom(formats.minute(list.wantedList.asOf))}</p>
      )}
      {finds.waiting.length > 0 && (
        <section className={styles['waiting']} aria-label={wanted.waiting} data-print="no">
          <h2>{wanted.waiting}</h2>
          <ul>
            {finds.waiting.map(({ input, what, problems }) => (
              <li key={input.key}>
                {what}, {formats.money(input.price)}
                {problems.map((problem) => (
                  <p key={problem} role="alert" {...fromApi} className={styles['problem']}>
                    {problem}
                  </p>
                ))}
                {problems.length > 0 && (
                  <Button weight="quiet" onClick={() => void finds.forget(input.key)}>
                    {wanted.forget}
                  </Button>
                )}
              </li>
            ))}
          </ul>
        </section>
      )}
      {!list && !isFailed && <Loading />}
      {!list && isFailed && (
        <Notice title={frame.failedTitle} help={wanted.neverFetched} isUrgent>
          <Button onClick={fetchAgain}>{frame.tryAgain}</Button>
        </Notice>
      )}
      {list && wants.length === 0 && <Notice title={wanted.noneTitle} help={wanted.noneHelp} />}
      <ul className={styles['wants']}>
        {wants.map((want) => (
          <WantedLine
            key={want.id}
            want={want}
            currency={want.ceiling?.currency ?? list?.collection.homeCurrency ?? ''}
            note={finds.note}
          />
        ))}
      </ul>
    </>
  );
}
