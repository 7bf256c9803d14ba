export const words = {
  level: {
    ON_AIR_READY: 'Funkbereit',
    CHECKS_DUE: 'Prüfung fällig',
    NOT_READY: 'Nicht bereit',
    DO_NOT_CONNECT: 'Nicht anschließen',
  },
  role: {
    AMPLIFIER: 'Endstufe',
    ANTENNA_COUPLER: 'Antennenkoppler',
    CONTROL: 'Steuerkasten',
    HEADPHONES: 'Kopfhörer',
    KEY: 'Taste',
    MICROPHONE: 'Mikrofon',
    POWER_SUPPLY: 'Netzteil',
    SPEAKER: 'Lautsprecher',
    TEST_GEAR: 'Messgerät',
    VFO: 'VFO',
  },
};
