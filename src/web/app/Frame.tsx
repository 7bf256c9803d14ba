import { Link, Outlet } from '@tanstack/react-router';
import { useConnected } from '../api/connection.js';
import { useTexts } from '../texts/textsContext.js';
import { Choices } from './Choices.js';
import { useFold } from './useFold.js';
import styles from './Frame.module.css';

const waysId = 'ways';

/** What stands around every page: the way to the others, and the person's choices. */
export function Frame() {
  const { frame } = useTexts();
  const isConnected = useConnected();
  const fold = useFold(waysId);
  const pages = [
    { to: '/', words: frame.tonight },
    { to: '/collection', words: frame.collection },
    { to: '/bench', words: frame.bench },
    { to: '/intake', words: frame.intake },
    { to: '/wanted', words: frame.wanted },
    { to: '/books', words: frame.books },
    { to: '/bring-a-list', words: frame.import },
    { to: '/ways-out', words: frame.waysOut },
  ] as const;
  return (
    <>
      <a className={styles['skip']} href="#content" data-print="no">
        {frame.skip}
      </a>
      <header className={styles['header']} data-print="no" onKeyDown={fold.onKeyDown}>
        <p className={styles['product']}>
          <img src="/lamp.svg" alt="" width="28" height="28" />
          {frame.product}
        </p>
        <button type="button" className={styles['opener']} {...fold.opener}>
          <svg viewBox="0 0 20 14" aria-hidden="true" width="20" height="14">
            <path d="M1 2h18M1 7h18M1 12h18" />
          </svg>
          {frame.pages}
        </button>
        <div id={waysId} className={styles['ways']} data-open={fold.isOpen}>
          <nav aria-label={frame.pages} className={styles['nav']}>
            <ul>
              {pages.map(({ to, words }) => (
                <li key={to}>
                  <Link to={to} activeOptions={{ exact: to === '/', includeSearch: false }}>
                    {words}
                  </Link>
                </li>
              ))}
            </ul>
          </nav>
          <Choices />
        </div>
      </header>
      <p className={styles['lost']} role="status" hidden={isConnected} data-print="no">
        {!isConnected && frame.lost}
      </p>
      <main id="content" className={styles['content']} tabIndex={-1}>
        <Outlet />
      </main>
    </>
  );
}
