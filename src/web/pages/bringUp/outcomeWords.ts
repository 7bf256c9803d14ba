import type { Formats } from '../../locale/formats.js';
import type { Texts } from '../../texts/texts.js';
import type { RunStep } from './stepDraft.js';
import { writtenReading } from './writtenReading.js';

/** How a step came out, in one sentence with its readings and what the limits say of them. */
export function outcomeWords(
  { plan, outcome, readings, verdicts }: RunStep,
  { bringUp, words }: Pick<Texts, 'bringUp' | 'words'>,
  formats: Formats,
): string {
  const read = readings.map((reading, index) => {
    const verdict = words.verdict[verdicts[index]?.word ?? 'NO_LIMIT'];
    return `${writtenReading(reading, formats)}, ${verdict}`;
  });
  const all = [`“${plan.title}”: ${bringUp.outcome[outcome]}`, ...read];
  return `${all.join('; ')}.`;
}
