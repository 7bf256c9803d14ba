import { Notice } from '../parts/Notice.js';
import { useTexts } from '../texts/textsContext.js';

export function NotFound() {
  const { frame } = useTexts();
  return <Notice title={frame.notFoundTitle} help={frame.notFoundHelp} isWholePage />;
}
