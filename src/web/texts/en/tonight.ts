/** Tonight: what may go on the air, and what to do with the hour there is. */
export const tonight = {
  title: 'Tonight',
  onTheAir: (count: number) =>
    count === 0
      ? 'No set may go on the air'
      : count === 1
        ? 'One set may go on the air'
        : `${count} sets may go on the air at once`,
  atOnce: 'Sets at once',
  licence:
    'By what is written down here. The licence you hold, local codes and a look at the set itself come first.',
  noneTitle: 'Nothing is ready',
  noneHelp: 'Below stands what each set lacks, and what would bring the most for an hour of work.',
  noBands: 'bands not written down for its model',
  mind: (count: number) => (count === 1 ? 'One thing to mind' : `${count} things to mind`),
  askedFor: 'Band, mode and power',
  band: 'Band',
  anyBand: 'Any',
  mode: 'Mode',
  atLeast: 'At least, W',
  allBands: 'All bands again',
  fromWatts: (watts: string) => `at least ${watts} W`,
  onBand: (asked: string, count: number) =>
    count === 0
      ? `${asked}: no set this evening`
      : count === 1
        ? `${asked}: one set this evening`
        : `${asked}: ${count} sets this evening`,
  heldUntil: (at: string) => `Looked at as of ${at}: final checks must hold until then.`,
  allocated: (edges: string, region: string, status: string) =>
    `The amateur service has ${edges} ${region}, ${status}.`,
  noAllocation: (band: string) =>
    `No allocation of ${band} is listed for the region of the station, or its region is not written down.`,
  noPower: 'power not written down',
  powerRead: (day: string) => `read on ${day}`,
  powerOfModel: 'as its model was made; not read on this set',
  onlyAlone: 'alone, not at once with the others',
  noneOnBand: (asked: string) => `Nothing is ready for ${asked}`,
  noneOnBandHelp:
    'Below stands why each set that works there is left out. Another band, mode or less power may do.',
  leftOutOf: (asked: string) => `Left out of ${asked}`,
  next: 'What would bring the most for an hour',
  stepGains: (kind: string, sets: number, hours: string) =>
    sets > 0 ? `${kind}: ${sets} more at once, some ${hours}` : `${kind}: some ${hours}`,
  noNext: 'Nothing that is written down would bring a set nearer to the air.',
  silent: 'Silent tonight',
  moreReasons: (count: number) => (count === 1 ? 'and one thing more' : `and ${count} things more`),
  atWork: (person: string) => `${person} is at work on`,
  leftRunning: (person: string) => `${person} left a timer running on`,
  whenEnded: (since: string) =>
    `It runs since ${since}. Nothing of it counts until you say when the work ended.`,
  endedWhen: 'When the work ended',
  sayWhen: 'It ended then',
  onBreak: 'On a break from',
  pause: 'Take a break',
  goOn: 'Go on',
  stop: 'Stop the timer',
};
