import { useEffect } from 'react';

/** Names the window after the page. */
export function useTitle(title: string): void {
  useEffect(() => {
    document.title = `${title} · Reglow`;
  }, [title]);
}
