export const contactLog = {
  title: 'Funktagebuch einlesen',
  what: 'Ein anderswo geführtes Funktagebuch als ADIF-Datei (.adi). Es wird in Stunden und Verbindungen der Geräte gezählt; die Rufzeichen anderer Stationen werden nicht aufgehoben. Zuerst wird es nur angesehen; nichts ändert sich, bevor Sie es sagen, und dasselbe Tagebuch noch einmal zählt nichts doppelt.',
  toList: 'Stattdessen eine Liste von Geräten einlesen',
  file: 'Das Tagebuch: wählen oder hier ablegen',
  emptyFile:
    'Diese Datei ist leer: Sie enthält kein einziges Zeichen. Bitte das Tagebuch neu in der ADI-Form von ADIF ausgeben und noch einmal wählen.',
  tooLong: (most: string) =>
    `Dieses Tagebuch ist länger als ${most} Zeichen. Mit „npm run reglow -- import-log“ geht jede Länge.`,
  usualRig: 'Verbindungen ohne Angabe des Geräts (MY_RIG) wurden gemacht mit',
  noUsualRig: 'nachfragen, falls eine vorkommt',
  gap: 'Ein Betrieb endet nach so vielen Minuten ohne Verbindung',
  rigs: 'Welche Geräte gemeint sind',
  said: 'Im Tagebuch',
  saysNone: 'nennt kein Gerät',
  contacts: 'Verbindungen',
  takenFor: 'Genommen für',
  takenForOf: (text: string) => `Genommen für: ${text}`,
  nobody: 'unbekannt: bitte wählen',
  read: (count: number) =>
    count === 1 ? 'Eine Verbindung wurde gelesen.' : `${count} Verbindungen wurden gelesen.`,
  counted: (count: number) =>
    count === 1
      ? 'Eine Verbindung ist jetzt gezählt.'
      : `${count} Verbindungen sind jetzt gezählt.`,
  count: (count: number) =>
    count === 1 ? 'Die eine Verbindung zählen' : `Alle ${count} Verbindungen zählen`,
  duplicates: (count: number) =>
    count === 1
      ? 'Eine Verbindung steht zweimal darin oder wurde schon gezählt.'
      : `${count} Verbindungen stehen zweimal darin oder wurden schon gezählt.`,
  nothingNew: 'Darin ist nichts Neues zu zählen.',
  days: 'Nach Tag und Gerät',
  day: 'Tag',
  rig: 'Gerät',
  hours: 'Stunden',
  character: 'Zeichen',
  notCounted: (contacts: number, reason: string) => `Nicht gezählt (${contacts}): ${reason}`,
  remarks: (count: number) =>
    count === 1 ? 'Eines ist einen Blick wert' : `${count} Dinge sind einen Blick wert`,
  fieldsLeftOut: (names: string) => `Nicht gelesen, bleibt nur im Tagebuch: ${names}.`,
};
