import { readinessAt, type Readiness } from './readinessAt.js';
import type { ReadinessFacts } from './readinessFacts.js';
import { readinessStanding } from './readinessStanding.js';

/**
 * May this rig go on the air? The worst of what is recorded decides; every reason is named with
 * what would remove it. An aid to memory: local codes, the licence held and qualified practice
 * come first. Equal to `readinessAt(readinessStanding(facts), nowMs, zone)`.
 */
export function readiness(facts: ReadinessFacts, nowMs: number, zone = 'UTC'): Readiness {
  return readinessAt(readinessStanding(facts), nowMs, zone);
}
