import { Link } from '@tanstack/react-router';
import { useTexts } from '../../texts/textsContext.js';

/** The way to where hazards are cleared and findings are settled. */
export function ToClearing({ number }: { number: string }) {
  const { bringUp } = useTexts();
  return (
    <p>
      <Link to="/sets/$number" params={{ number }}>
        {bringUp.toClearing}
      </Link>
    </p>
  );
}
