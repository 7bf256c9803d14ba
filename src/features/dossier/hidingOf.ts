import { withheldWord } from './dossierDocument.js';

/** Takes what is withheld out of what somebody wrote. */
export type Hiding = (text: string) => string;

const shortestName = 3;

/** Takes words out of a text wherever they stand, and amounts of money on request. */
export function hidingOf(
  words: readonly string[],
  { isMoneyHidden }: { isMoneyHidden: boolean },
): Hiding {
  const patterns = [
    // “boat store” is the Boat store; but to take every “may” for somebody called May would leave no text.
    anyOf(words.filter(isPhrase), 'giu'),
    anyOf(
      words.filter((word) => !isPhrase(word)),
      'gu',
    ),
    ...(isMoneyHidden ? [amountsOfMoney] : []),
  ];
  return (text) => patterns.reduce((left, pattern) => left.replaceAll(pattern, withheldWord), text);
}

const isPhrase = (word: string): boolean => /\S\s+\S/.test(word);

/** Whole words only; the longest first, so that no half of one is left. */
function anyOf(words: readonly string[], flags: string): RegExp {
  const parts = [...new Set(words)]
    .filter((word) => word.length >= shortestName)
    .sort((one, other) => other.length - one.length || (one < other ? -1 : 1))
    .map((word) => word.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&').replaceAll(/\s+/g, '\\s+'));
  return parts.length === 0
    ? /(?!)/g
    : new RegExp(`(?<![\\p{L}\\p{N}])(?:${parts.join('|')})(?![\\p{L}\\p{N}])`, flags);
}

const amount = String.raw`\d[\d.,']*`;
const unit = String.raw`(?:[$£€¥]|\b(?:${Intl.supportedValuesOf('currency').join('|')})\b)`;
const wordUnit = String.raw`(?:euros?|pounds?|dollars?|francs?|crowns?|quid)\b`;
const amountsOfMoney = new RegExp(
  `${unit}\\s?${amount}|${amount}\\s?(?:${unit}|${wordUnit})`,
  'giu',
);
