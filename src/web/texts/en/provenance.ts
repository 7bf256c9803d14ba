/** Where a set came from, on a time axis. */
export const provenance = {
  title: 'Where it came from',
  titleOf: (number: string) => `Where ${number} came from`,
  axis: 'Over the years',
  axisHeard: 'The same as in the table below, drawn over the years.',
  events: 'Event by event',
  contradictions: 'What cannot all be true',
  contradicted: 'contradicted',
  coverage: (certain: string, possible: string) =>
    `Somebody surely held it for ${certain} of the time since it was made, and may have for ${possible}.`,
  gap: (from: string, to: string, least: string, most: string) =>
    `Not accounted for: ${from} to ${to} (${least === most ? most : `${least} to ${most}`} years).`,
  madeBetween: (from: string, to: string) =>
    `By all that is written down it was made between ${from} and ${to}.`,
  nothingDated: 'Nothing that is written down of it has a date yet.',
  thisCollection: 'this collection',
  unknownHolder: 'somebody unknown',
  notAccountedFor: 'not accounted for',
  when: 'When',
  what: 'What happened',
  reliance: 'How far to rely on it',
};
