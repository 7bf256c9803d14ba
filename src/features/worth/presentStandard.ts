import type { Standard } from '../../domain/worth/standards.js';
import type { WorthSubject } from './worthFacts.reads.js';

/** The condition that an item is taken to be in, and why, as a sentence. */
export function presentStandard({
  presentStandard: stated,
  reached,
}: WorthSubject): [Standard, string] {
  if (stated !== null) return [stated, 'Its present condition is as the owner states it.'];
  if (reached !== null && reached !== 'PARTS_DONOR') {
    return [reached, 'Its present condition is what its last completed restoration aimed at.'];
  }
  return ['NOT_WORKING', 'Nothing says that it works, so it is taken as not working.'];
}
