import { millsRatio } from '../estimates/millsRatio.js';

/** Upper tail of the standard normal distribution beyond z, z from 0 up. */
export const normalTail = (z: number): number =>
  (millsRatio(z) * Math.exp(-(z * z) / 2)) / Math.sqrt(2 * Math.PI);
