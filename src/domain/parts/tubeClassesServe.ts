import type { TubeClass } from './tubeClass.js';

const pentodes: readonly TubeClass[] = ['SHARP_PENTODE', 'SEMIREMOTE_PENTODE', 'REMOTE_PENTODE'];
const powerTubes: readonly TubeClass[] = ['POWER_PENTODE', 'BEAM_POWER'];

/** Whether a tube of one class can stand in for another at all, and whether as it is. */
export function tubeClassesServe(
  wanted: TubeClass | undefined,
  offered: TubeClass | undefined,
): 'AS_IT_IS' | 'WITH_CHANGES' | 'NOT' {
  if (wanted === undefined || offered === undefined) return 'NOT';
  if (wanted === offered) return 'AS_IT_IS';
  if (pentodes.includes(wanted) && pentodes.includes(offered)) return 'WITH_CHANGES';
  return powerTubes.includes(wanted) && powerTubes.includes(offered) ? 'AS_IT_IS' : 'NOT';
}
