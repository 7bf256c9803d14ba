import type { CombinedError } from 'urql';
import { fromApi } from '../texts/fromApi.js';
import { useTexts } from '../texts/textsContext.js';
import { Button } from './Button.js';
import { Notice } from './Notice.js';

/** What went wrong with a question to the API, and the way to ask again. */
export function Failed({
  error,
  retry,
  isWholePage = false,
}: {
  error: CombinedError;
  retry: () => void;
  isWholePage?: boolean;
}) {
  const { frame } = useTexts();
  const said = error.graphQLErrors.map((each) => each.message).join(' ');
  return (
    <Notice
      title={frame.failedTitle}
      help={said ? <span {...fromApi}>{said}</span> : frame.failedNoServer}
      isUrgent
      isWholePage={isWholePage}
    >
      <Button onClick={retry}>{frame.tryAgain}</Button>
    </Notice>
  );
}
