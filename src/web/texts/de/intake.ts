export const intake = {
  title: 'Aufnahme',
  titleOf: (number: string) => `Aufnahme ${number}`,
  intro:
    'Erst schauen, dann anschließen: was fehlt, was ist schmutzig oder zerbrochen, was kann verletzen. Was eingegeben wird, bleibt auf diesem Gerät, bis es gesendet ist.',
  goOn: 'Auf diesem Gerät begonnen',
  existing: 'Eines, das schon vermerkt ist',
  existingHelp: 'Seine Nummer; dann Bereich für Bereich.',
  number: 'Nummer',
  lookOver: 'Durchsehen',
  fresh: 'Ein neues',
  kind: 'Was es ist',
  rig: 'ein Gerät, das sendet oder empfängt',
  accessory: 'ein Zubehör, das einem dient',
  role: 'Wozu es dient',
  name: 'Wie es heißen soll',
  model: 'Modell',
  modelHint: 'Ein paar Buchstaben eingeben',
  modelUnknown: (typed: string) =>
    `Kein Modell heißt „${typed}“. Eines aus der Liste wählen oder vorerst leer lassen.`,
  serial: 'Seriennummer',
  place: 'Wo es steht',
  noPlace: 'nicht vermerkt',
  made: 'Wann es gebaut wurde',
  madeHint: '1962, 196X, 1962/1966',
  note: 'Bemerkungen',
  writeDown: 'Festhalten und durchsehen',
  zones: 'Bereich für Bereich',
  whole: 'Gefahren',
  send: 'Senden',
  zoneSummary: (findings: number, ticked: number, positions: number) =>
    [
      findings > 0 && (findings === 1 ? '1 Befund' : `${findings} Befunde`),
      positions > 0 && `${ticked} von ${positions} abgehakt`,
    ]
      .filter(Boolean)
      .join(', '),
  fitOut: 'Was ein vollständiges hier hat',
  fitOutHelp:
    'Auf und ab: von Platz zu Platz. Links und rechts: wie es ist. Oder ein Buchstabe, und weiter zum nächsten:',
  letters: { PRESENT: 'd', MISSING: 'f', WRONG: 'a', UNKNOWN: 'n' },
  optional: 'nicht erforderlich',
  nothingExpected: 'Sein Modell nennt keinen Platz in diesem Bereich.',
  noFitOut: 'Zu seinem Modell ist keine Bestückung vermerkt, es gibt also nichts abzuhaken.',
  allThere: 'Alle übrigen sind da',
  findings: 'Was hier zu sehen ist',
  finding: (index: number) => `Befund ${index}`,
  addFinding: 'Befund hinzufügen',
  drop: 'Streichen',
  picture: 'Bild davon',
  pictures: (count: number) => (count === 1 ? '1 Bild' : `${count} Bilder`),
  next: (zone: string) => `Weiter zu: ${zone}`,
  hazardHelp:
    'Ankreuzen, was zu sehen ist oder womit zu rechnen ist. Örtliche Vorschriften und fachkundige Praxis gehen vor.',
  already: 'schon vermerkt',
  recognised: 'Woran es zu erkennen ist',
  hazardNote: 'Wo, und woran erkannt',
  nothing: 'Noch ist nichts eingetragen: kein Befund, kein Platz, keine Gefahr.',
  summary: (findings: number, checks: number, hazards: number) =>
    `${findings} ${findings === 1 ? 'Befund' : 'Befunde'}, ${checks} ${checks === 1 ? 'Platz' : 'Plätze'} abgehakt, ${hazards} ${hazards === 1 ? 'Gefahr' : 'Gefahren'}.`,
  othersTitle: 'Es wurde inzwischen durchgesehen',
  somebody: 'Jemand',
  otherLooked: (who: string, when: string) => `${who}, ${when}`,
  othersHelp:
    'Was eingetippt ist, bleibt erhalten. Vergleichen, weglassen, was schon vermerkt ist, dann senden: Diese Durchsicht wird neben der anderen festgehalten.',
  othersNoted: 'Zur Kenntnis genommen',
  othersBeforeSending: (count: number) =>
    count === 1
      ? 'Seit dem Beginn wurde eine andere Durchsicht festgehalten: Sie steht oben auf dieser Seite.'
      : `Seit dem Beginn wurden ${count} andere Durchsichten festgehalten: Sie stehen oben auf dieser Seite.`,
  record: 'Durchsicht festhalten',
  recordedTitle: 'Die Durchsicht ist festgehalten',
  recorded: 'Was hier stand, ist nun in den Aufzeichnungen; der Entwurf auf diesem Gerät ist leer.',
  toPage: 'Zu seiner Seite',
  toBench: 'Auf die Werkbank',
  another: 'Ein weiteres aufnehmen',
};
