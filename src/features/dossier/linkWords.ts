/** Who handed it on, and to whom, as far as either is known. */
export function linkWords(from: string, to: string): string {
  if (from === '') return to === '' ? '' : `to ${to}`;
  return to === '' ? `from ${from}` : `from ${from} to ${to}`;
}
