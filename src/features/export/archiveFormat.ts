/** What a Reglow archive calls itself; our own format. */
export const archiveFormat = 'reglow-archive';

/** Goes up when tables or columns change; older ones are still to be loaded, newer ones refused. */
export const archiveVersion = 2;
