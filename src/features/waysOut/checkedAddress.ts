import { argumentProblem } from '../../api/kit/argumentProblem.js';

const plainAddress = /^https?:\/\/([\w.-]{1,253}|\[[\da-f:]{2,45}\])(:\d{1,5})?$/i;

/**
 * The address that examples are printed with. They are meant to be pasted into a shell: nothing but
 * a scheme, a host and a port goes in.
 */
export function checkedAddress(address: string): string {
  if (plainAddress.test(address)) return address;
  throw argumentProblem('Give the address as http://localhost:4600, without a path.');
}
