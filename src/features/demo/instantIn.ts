import type { DemoClock } from './demoClock.js';
import { DemoProblem } from './demoProblem.js';
import { messageOf } from './messageOf.js';

/** A time written in a file. @throws DemoProblem that names the place when it cannot be read. */
export function instantIn(clock: DemoClock, where: string, text: string): Date {
  try {
    return clock.instant(text);
  } catch (error) {
    throw new DemoProblem(where, messageOf(error), error);
  }
}
