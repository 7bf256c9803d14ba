import type { ShownProblem } from '../../api/useSend.js';

/** Something typed that cannot be sent as it is, as a problem beside its field. */
export const unreadAt = (path: readonly string[], message: string): ShownProblem => ({
  code: 'INVALID',
  isOfPage: true,
  message,
  path,
});
