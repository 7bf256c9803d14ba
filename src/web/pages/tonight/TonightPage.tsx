import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';

export function TonightPage() {
  const { frame } = useTexts();
  useTitle(frame.tonight);
  return <h1>{frame.tonight}</h1>;
}
