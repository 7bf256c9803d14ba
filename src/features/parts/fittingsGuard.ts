/** Fittings are written one act at a time: a swap touches two items and two components at once. */
export const fittingsGuard = 'fittings';
