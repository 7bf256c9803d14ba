/** The words of the API's lists, as people say them. */
export const words = {
  level: {
    ON_AIR_READY: 'On-air ready',
    CHECKS_DUE: 'Checks due',
    NOT_READY: 'Not ready',
    DO_NOT_CONNECT: 'Do not connect',
  },
  role: {
    AMPLIFIER: 'amplifier',
    ANTENNA_COUPLER: 'antenna coupler',
    CONTROL: 'control box',
    HEADPHONES: 'headphones',
    KEY: 'key',
    MICROPHONE: 'microphone',
    POWER_SUPPLY: 'power supply',
    SPEAKER: 'speaker',
    TEST_GEAR: 'test gear',
    VFO: 'VFO',
  },
};
