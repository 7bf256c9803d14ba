import { decimalText } from '../decimal/decimalText.js';
import { parseDecimal } from '../decimal/parseDecimal.js';

/** Volumes are given to this many decimals of the unit asked for. */
const DECIMALS = 3;

export interface DilutionVolumes {
  /** Exact decimals in the unit of the amount; together they are the amount. */
  readonly agent: string;
  readonly water: string;
}

/**
 * How much agent and how much water make a wanted amount. Parts are parts by volume: 1 part of agent
 * to 9 of water, not 1 in 9. The agent is rounded to a thousandth of the unit, half up, and water
 * fills up, so that the two add up to the amount exactly.
 * @throws RangeError when a number cannot be read, or parts and amount are not above zero
 */
export function dilutionVolumes(
  agentParts: string,
  waterParts: string,
  amount: string,
): DilutionVolumes {
  const [agent, water, wanted] = [agentParts, waterParts, amount].map((text) => {
    const decimal = parseDecimal(text);
    if (decimal === null) throw new RangeError(`“${text}” is not a decimal number.`);
    return decimal;
  });
  if (!agent || !water || !wanted) throw new RangeError('Three numbers are needed.');
  if (agent.coefficient <= 0n || water.coefficient < 0n || wanted.coefficient <= 0n) {
    throw new RangeError('The agent’s parts and the amount are above zero, water zero or more.');
  }
  const decimals = Math.max(agent.decimals, water.decimals);
  const scaled = (one: { coefficient: bigint; decimals: number }, to: number): bigint =>
    one.coefficient * 10n ** BigInt(to - one.decimals);
  const agentWhole = scaled(agent, decimals);
  const parts = agentWhole + scaled(water, decimals);
  const fine = Math.max(DECIMALS, wanted.decimals);
  const total = scaled(wanted, fine);
  const unit = 10n ** BigInt(fine - DECIMALS);
  const agentFine = ((2n * total * agentWhole + parts * unit) / (2n * parts * unit)) * unit;
  const text = (coefficient: bigint): string => decimalText({ coefficient, decimals: fine });
  return { agent: text(agentFine), water: text(total - agentFine) };
}
