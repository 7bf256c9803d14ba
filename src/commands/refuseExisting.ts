import { existsSync } from 'node:fs';
import { CommandFailure } from './commandFailure.js';

/** What is there is not overwritten unless asked for. @throws CommandFailure */
export function refuseExisting(path: string, isReplaced: boolean): void {
  if (!isReplaced && existsSync(path)) {
    throw new CommandFailure(`${path} is there already: choose another name, or add --replace.`);
  }
}
