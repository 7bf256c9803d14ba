import { createHash } from 'node:crypto';
import type { LoggedContact } from '../../domain/contactLog/loggedContact.js';

const MINUTE_MS = 60_000;

/**
 * Tells a contact that was counted before, without keeping the other station's call: 64 bits of a
 * SHA-256. Two logs of one contact may differ in the seconds, and in capitals.
 */
export const contactKey = ({ call, startedAtMs, band, mode }: LoggedContact): string =>
  createHash('sha256')
    .update([call, Math.floor(startedAtMs / MINUTE_MS), band ?? '', mode ?? ''].join('|'))
    .digest('hex')
    .slice(0, 16);
