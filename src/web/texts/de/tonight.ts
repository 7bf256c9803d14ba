export const tonight = {
  title: 'Heute Abend',
  onTheAir: (count: number) =>
    count === 0
      ? 'Kein Gerät darf senden'
      : count === 1
        ? 'Ein Gerät darf senden'
        : `${count} Geräte dürfen zugleich senden`,
  atOnce: 'Geräte zugleich',
  licence:
    'Nach dem, was hier vermerkt ist. Die eigene Lizenz, örtliche Vorschriften und ein Blick auf das Gerät gehen vor.',
  noneTitle: 'Nichts ist bereit',
  noneHelp: 'Unten steht, was jedem Gerät fehlt und was für eine Stunde Arbeit am meisten brächte.',
  noBands: 'Bänder zum Modell nicht vermerkt',
  mind: (count: number) =>
    count === 1 ? 'Eines ist zu beachten' : `${count} Dinge sind zu beachten`,
  next: 'Was für eine Stunde am meisten brächte',
  noNext: 'Nichts Vermerktes brächte ein Gerät dem Betrieb näher.',
  silent: 'Heute stumm',
  moreReasons: (count: number) => (count === 1 ? 'und eines mehr' : `und ${count} weitere`),
  atWork: (person: string) => `${person} arbeitet an`,
  leftRunning: (person: string) => `${person} ließ eine Uhr laufen bei`,
  endedWhen: 'Wann die Arbeit endete',
  sayWhen: 'Da endete sie',
  onBreak: 'Pause bei',
  pause: 'Pause machen',
  goOn: 'Weiter',
  stop: 'Uhr anhalten',
};
