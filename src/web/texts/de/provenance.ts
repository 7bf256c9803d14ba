export const provenance = {
  title: 'Woher es kam',
  titleOf: (number: string) => `Woher ${number} kam`,
  axis: 'Über die Jahre',
  axisHeard: 'Dasselbe wie in der Tabelle darunter, über die Jahre gezeichnet.',
  events: 'Ereignis für Ereignis',
  contradictions: 'Was nicht alles wahr sein kann',
  contradicted: 'widersprochen',
  coverage: (certain: string, possible: string) =>
    `Für ${certain} der Zeit seit dem Bau ist ein Besitzer sicher, für ${possible} möglich.`,
  gap: (from: string, to: string, least: string, most: string) =>
    `Ohne Nachweis: ${from} bis ${to} (${least === most ? most : `${least} bis ${most}`} Jahre).`,
  madeBetween: (from: string, to: string) =>
    `Nach allem Vermerkten wurde es zwischen ${from} und ${to} gebaut.`,
  nothingDated: 'Nichts von dem, was vermerkt ist, hat schon ein Datum.',
  thisCollection: 'diese Sammlung',
  unknownHolder: 'jemand Unbekanntes',
  notAccountedFor: 'ohne Nachweis',
  when: 'Wann',
  what: 'Was geschah',
  reliance: 'Wie weit darauf Verlass ist',
};
