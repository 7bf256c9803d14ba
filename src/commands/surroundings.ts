import type { Config } from '../config.js';

/** What a command may know and touch of the world outside. */
export interface Surroundings {
  config: Config;
  /** Milliseconds since the epoch. */
  nowMs: () => number;
  /** The answer, a line: standard output. */
  print: (line: string) => void;
  /** What is going on, and what went wrong, a line: standard error. */
  say: (line: string) => void;
  /** Rewrites the last line of the terminal; null where standard error is no terminal. */
  repaint: ((text: string) => void) | null;
  /** Resolves when the person or the system asks the program to end. */
  untilStopped: () => Promise<void>;
  /** Shows where a failure came from, for those who mend the program. */
  isDebugging: boolean;
}
