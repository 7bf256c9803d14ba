import type { Hiding } from '../dossier/hidingOf.js';

/** An answer with what is withheld taken out of everything that somebody wrote. */
export function hideTexts(answer: unknown, textKeys: ReadonlySet<string>, hiding: Hiding): unknown {
  if (Array.isArray(answer)) return answer.map((each) => hideTexts(each, textKeys, hiding));
  if (typeof answer !== 'object' || answer === null) return answer;
  return Object.fromEntries(
    Object.entries(answer).map(([key, value]: [string, unknown]) => [
      key,
      textKeys.has(key) ? hideText(value, hiding) : hideTexts(value, textKeys, hiding),
    ]),
  );
}

function hideText(value: unknown, hiding: Hiding): unknown {
  if (typeof value === 'string') return hiding(value);
  return Array.isArray(value) ? value.map((each) => hideText(each, hiding)) : value;
}
