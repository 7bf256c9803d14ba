import type { ReferenceSourceType } from './reference.type.js';
import { sourceNamed } from './referenceSources.js';

/** A source by its key, as the API shows it. */
export function shownSource(key: string): ReferenceSourceType {
  const { title, address, isPublished } = sourceNamed(key);
  return { title, address: address ?? null, isPublished };
}
