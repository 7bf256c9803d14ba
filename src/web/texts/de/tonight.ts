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
  askedFor: 'Band, Betriebsart und Leistung',
  band: 'Band',
  anyBand: 'alle',
  mode: 'Betriebsart',
  atLeast: 'Mindestens, W',
  allBands: 'Wieder alle Bänder',
  fromWatts: (watts: string) => `mindestens ${watts} W`,
  onBand: (asked: string, count: number) =>
    count === 0
      ? `${asked}: heute Abend kein Gerät`
      : count === 1
        ? `${asked}: heute Abend ein Gerät`
        : `${asked}: heute Abend ${count} Geräte`,
  heldUntil: (at: string) => `Stand ${at}: bis dahin müssen die Schlussprüfungen gelten.`,
  allocated: (edges: string, region: string, status: string) =>
    `Der Amateurfunkdienst hat ${edges} ${region}, ${status}.`,
  noAllocation: (band: string) =>
    `Zu ${band} ist für die Region der Station keine Zuweisung verzeichnet, oder ihre Region ist nicht vermerkt.`,
  noPower: 'Leistung nicht vermerkt',
  powerRead: (day: string) => `gemessen am ${day}`,
  powerOfModel: 'wie das Modell gebaut wurde; an diesem Gerät nicht gemessen',
  onlyAlone: 'allein, nicht zugleich mit den anderen',
  noneOnBand: (asked: string) => `Nichts ist bereit für ${asked}`,
  noneOnBandHelp:
    'Unten steht, warum jedes Gerät, das dort arbeitet, ausgelassen ist. Ein anderes Band, eine andere Betriebsart oder weniger Leistung mag gehen.',
  leftOutOf: (asked: string) => `Ausgelassen bei ${asked}`,
  next: 'Was für eine Stunde am meisten brächte',
  stepGains: (kind: string, sets: number, hours: string) =>
    sets > 0 ? `${kind}: ${sets} mehr zugleich, etwa ${hours}` : `${kind}: etwa ${hours}`,
  noNext: 'Nichts Vermerktes brächte ein Gerät dem Betrieb näher.',
  silent: 'Heute stumm',
  moreReasons: (count: number) => (count === 1 ? 'und eines mehr' : `und ${count} weitere`),
  atWork: (person: string) => `${person} arbeitet an`,
  leftRunning: (person: string) => `${person} ließ eine Uhr laufen bei`,
  whenEnded: (since: string) =>
    `Sie läuft seit ${since}. Nichts davon zählt, bis gesagt ist, wann die Arbeit endete.`,
  endedWhen: 'Wann die Arbeit endete',
  sayWhen: 'Da endete sie',
  onBreak: 'Pause bei',
  pause: 'Pause machen',
  goOn: 'Weiter',
  stop: 'Uhr anhalten',
};
