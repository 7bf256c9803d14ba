import type { ShownProblem } from '../../api/useSend.js';
import { typedNumber } from '../../locale/typedNumber.js';
import type { Texts } from '../../texts/texts.js';
import { unreadAt } from './unreadAt.js';

/** Hours as they were typed, or what is to be mended. */
export function readHours(
  typed: string,
  path: readonly string[],
  { hoursMissing, hoursUnread }: Texts['plan'],
): { hours: number } | { unread: ShownProblem } {
  if (typed.trim() === '') return { unread: unreadAt(path, hoursMissing) };
  const number = typedNumber(typed);
  return number === null ? { unread: unreadAt(path, hoursUnread) } : { hours: Number(number) };
}
