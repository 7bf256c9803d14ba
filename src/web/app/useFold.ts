import { useRouterState } from '@tanstack/react-router';
import { useEffect, useRef, useState, type KeyboardEvent } from 'react';

/**
 * What is folded away in a narrow window: opened by its button, closed again by Escape, which gives
 * the focus back, and by going to another page.
 * @param controls the id of what is folded
 */
export function useFold(controls: string) {
  const [isOpen, setIsOpen] = useState(false);
  const ref = useRef<HTMLButtonElement>(null);
  const address = useRouterState({ select: ({ location }) => location.pathname });
  useEffect(() => {
    setIsOpen(false);
  }, [address]);
  return {
    isOpen,
    opener: {
      ref,
      'aria-expanded': isOpen,
      'aria-controls': controls,
      onClick: () => {
        setIsOpen((before) => !before);
      },
    },
    onKeyDown: ({ key }: KeyboardEvent) => {
      if (key !== 'Escape' || !isOpen) return;
      setIsOpen(false);
      ref.current?.focus();
    },
  };
}
