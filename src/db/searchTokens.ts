/**
 * The plain words of a text: lower case, no diacritics, letters and digits only. Used for what is
 * kept and for what is asked, so that both engines find the same set.
 */
export function searchTokens(text: string): string[] {
  const folded = text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  return folded.match(/[\p{L}\p{N}]+/gu) ?? [];
}
