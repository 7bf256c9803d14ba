/** What a tube is made to do, as far as one may stand in for another. */
export const tubeClasses = [
  'SHARP_PENTODE',
  'SEMIREMOTE_PENTODE',
  'REMOTE_PENTODE',
  'POWER_PENTODE',
  'BEAM_POWER',
  'TETRODE',
  'TRIODE',
  'TWIN_TRIODE',
  'POWER_TRIODE',
  'TRIODE_PENTODE',
  'CONVERTER',
  'GATED_HEPTODE',
  'TWIN_DIODE',
  'DIODE_TRIODE',
  'FULL_WAVE_RECTIFIER',
  'HALF_WAVE_RECTIFIER',
  'REGULATOR',
] as const;
export type TubeClass = (typeof tubeClasses)[number];
