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
  next: 'What would bring the most for an hour',
  noNext: 'Nothing that is written down would bring a set nearer to the air.',
  silent: 'Silent tonight',
  moreReasons: (count: number) => (count === 1 ? 'and one thing more' : `and ${count} things more`),
  atWork: (person: string) => `${person} is at work on`,
  leftRunning: (person: string) => `${person} left a timer running on`,
  endedWhen: 'When the work ended',
  sayWhen: 'It ended then',
  onBreak: 'On a break from',
  pause: 'Take a break',
  goOn: 'Go on',
  stop: 'Stop the timer',
};
