/** Bringing a log of contacts in. */
export const contactLog = {
  title: 'Bring a contact log',
  what: 'A log that you keep elsewhere, as an ADIF file (.adi). It is counted into hours and contacts of your sets; the calls of other stations are not kept. First it is only looked at; nothing changes before you say so, and the same log again counts nothing twice.',
  toList: 'Bring a list of sets instead',
  file: 'The log: choose it, or drop it here',
  emptyFile:
    'This file is empty: there is not one character in it. Export the log again in the ADI form of ADIF, and choose it again.',
  tooLong: (most: string) =>
    `This log is longer than ${most} characters. Bring it in with “npm run reglow -- import-log”, which takes any length.`,
  usualRig: 'Contacts that do not say their rig (MY_RIG) were made with',
  noUsualRig: 'ask me if there is one',
  gap: 'A use ends after so many minutes without a contact',
  rigs: 'Which rigs it means',
  said: 'In the log',
  saysNone: 'says no rig',
  contacts: 'Contacts',
  takenFor: 'Taken for',
  takenForOf: (text: string) => `Taken for: ${text}`,
  nobody: 'not known: choose one',
  read: (count: number) => (count === 1 ? 'One contact was read.' : `${count} contacts were read.`),
  counted: (count: number) =>
    count === 1 ? 'One contact is now counted.' : `${count} contacts are now counted.`,
  count: (count: number) => (count === 1 ? 'Count the one contact' : `Count all ${count} contacts`),
  duplicates: (count: number) =>
    count === 1
      ? 'One contact stands twice in it or was counted before.'
      : `${count} contacts stand twice in it or were counted before.`,
  nothingNew: 'There is nothing new in it to be counted.',
  days: 'By day and rig',
  day: 'Day',
  rig: 'Rig',
  hours: 'Hours',
  character: 'Character',
  notCounted: (contacts: number, reason: string) => `Not counted (${contacts}): ${reason}`,
  remarks: (count: number) =>
    count === 1 ? 'One thing is worth a look' : `${count} things are worth a look`,
  fieldsLeftOut: (names: string) => `Not read, they stay in the log alone: ${names}.`,
};
