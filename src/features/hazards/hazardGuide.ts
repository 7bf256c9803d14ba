import { hazardCatalogue } from './hazardCatalogue.js';
import type { HazardKind } from './hazardKind.js';
import type { HazardGuide } from './loadHazardCatalogue.js';

/** @throws Error for a kind without a file, which the start has ruled out. */
export function hazardGuide(kind: HazardKind): HazardGuide {
  const guide = hazardCatalogue.get(kind);
  if (!guide) throw new Error(`The hazard catalogue has nothing on ${kind}.`);
  return guide;
}
