/** Intake: a set is looked over, zone by zone, before it is ever connected. */
export const intake = {
  title: 'Intake',
  titleOf: (number: string) => `Intake ${number}`,
  intro:
    'Look before you connect anything: what is missing, what is dirty or broken, what can hurt. What you type is kept on this device until it is sent.',
  goOn: 'Begun on this device',
  existing: 'One that is written down',
  existingHelp: 'Its number; then zone by zone.',
  number: 'Number',
  lookOver: 'Look it over',
  fresh: 'A new one',
  kind: 'What it is',
  rig: 'a set that transmits or receives',
  accessory: 'an accessory that serves one',
  role: 'What it does',
  name: 'What you call it',
  model: 'Model',
  modelHint: 'Type a few letters',
  modelUnknown: (typed: string) =>
    `No model is called “${typed}”. Choose one from the list, or leave it empty for now.`,
  serial: 'Serial number',
  place: 'Where it stands',
  noPlace: 'not written down',
  made: 'When it was made',
  madeHint: '1962, 196X, 1962/1966',
  note: 'Remarks',
  writeDown: 'Write it down and look it over',
  zones: 'Zone by zone',
  whole: 'Hazards',
  send: 'Send',
  zoneSummary: (findings: number, ticked: number, positions: number) =>
    [
      findings > 0 && (findings === 1 ? '1 finding' : `${findings} findings`),
      positions > 0 && `${ticked} of ${positions} ticked`,
    ]
      .filter(Boolean)
      .join(', '),
  fitOut: 'What a complete one has here',
  fitOutHelp:
    'Up and down: from position to position. Left and right: how it is. Or a letter, and on to the next:',
  letters: { PRESENT: 't', MISSING: 'm', WRONG: 'w', UNKNOWN: 'n' },
  optional: 'not required',
  nothingExpected: 'Its model names no position in this zone.',
  noFitOut: 'No fit-out is written down for its model, so there is nothing to tick off.',
  allThere: 'All the rest are there',
  findings: 'What you see here',
  finding: (index: number) => `Finding ${index}`,
  addFinding: 'Add a finding',
  drop: 'Strike it out',
  picture: 'Picture of it',
  pictures: (count: number) => (count === 1 ? '1 picture' : `${count} pictures`),
  next: (zone: string) => `On to: ${zone}`,
  hazardHelp:
    'Tick what you see or must reckon with. Local codes and qualified practice come first.',
  already: 'written down already',
  recognised: 'How to recognise it',
  hazardNote: 'Where, and how you know',
  nothing: 'Nothing is written down yet: no finding, no position, no hazard.',
  summary: (findings: number, checks: number, hazards: number) =>
    `${findings} ${findings === 1 ? 'finding' : 'findings'}, ${checks} ${checks === 1 ? 'position' : 'positions'} ticked off, ${hazards} ${hazards === 1 ? 'hazard' : 'hazards'}.`,
  othersTitle: 'It was looked over in the meantime',
  somebody: 'Somebody',
  otherLooked: (who: string, when: string) => `${who}, ${when}`,
  othersHelp:
    'What you have typed is kept. Compare, take out what is written down already, then send yours: it is recorded beside the other.',
  othersNoted: 'Taken note of',
  othersBeforeSending: (count: number) =>
    count === 1
      ? 'Since you began, another inspection was recorded: it stands at the top of this page.'
      : `Since you began, ${count} other inspections were recorded: they stand at the top of this page.`,
  record: 'Record the inspection',
  recordedTitle: 'The inspection is recorded',
  recorded: 'What was typed here is in the records now; the draft on this device is empty.',
  toPage: 'To its page',
  toBench: 'To the bench',
  another: 'Take in another',
};
