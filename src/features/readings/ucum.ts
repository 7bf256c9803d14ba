import { createRequire } from 'node:module';
import { parseDecimal } from '../../domain/decimal/parseDecimal.js';
import { decimalText } from '../../domain/decimal/decimalText.js';

/** What is used of a unit of `@lhncbc/ucum-lhc`, which has no types of its own. */
interface Unit {
  magnitude_: number;
  isSpecial_: boolean;
  dim_: { equals(other: unknown): boolean; isZero(): boolean } | null;
}
interface Ucum {
  getSpecifiedUnit(text: string, mode: 'validate', suggest: false): { unit: Unit | null };
  convertUnitTo(from: string, value: number, to: string): { status: string; toVal: number | null };
}

const longestUnit = 40;
const unitCharacters = /^[A-Za-z0-9.*/^+\-()[\]{}_%'"]+$/;
/** Ratios of two units come out of a double's last digits: 999.9999999999999 is 1000. */
const certainDigits = 13;
const quotientDecimals = 24n;

let loaded: Ucum | undefined;

/** Loaded at the first use: its tables take a fifth of a second. */
function ucum(): Ucum {
  // The package is CommonJS without types; the cast names all that is used of it.
  loaded ??= (
    createRequire(import.meta.url)('@lhncbc/ucum-lhc') as {
      UcumLhcUtils: { getInstance(): Ucum };
    }
  ).UcumLhcUtils.getInstance();
  return loaded;
}

/** Units already looked up: a collection uses a few dozen. */
const known = new Map<string, Unit>();

function unitOf(text: string): Unit | null {
  const cached = known.get(text);
  if (cached) return cached;
  if (text.length > longestUnit || !unitCharacters.test(text)) return null;
  // Stray brackets and several parentheses are misread by the package, which prints its complaint.
  const bare = text.replace(/\{[^{}[\]]*\}|\[[^{}[\]]*\]/g, '');
  if (!/^[^()[\]{}]*(\([^()[\]{}]+\)[^()[\]{}]*)?$/.test(bare)) return null;
  const { unit } = ucum().getSpecifiedUnit(text, 'validate', false);
  // Its look-up finds `constructor` too: only what has a magnitude is a unit.
  if (typeof unit?.magnitude_ !== 'number' || !Number.isFinite(unit.magnitude_)) return null;
  if (known.size < 1000) known.set(text, unit);
  return unit;
}

/** Why a text is no unit of UCUM (case-sensitive codes), as a sentence; null when it is one. */
export function ucumProblem(unit: string): string | null {
  if (unit.length > longestUnit) {
    return `This unit is ${unit.length} characters long; ${longestUnit} is the most.`;
  }
  return unitOf(unit)
    ? null
    : `“${unit}” is not a unit of UCUM. Write it as V, mA, uF, kOhm, MHz, mS, W or dB; 1 for a plain number.`;
}

/**
 * A decimal number in one UCUM unit, in another: exact where the ratio of the two is.
 * @returns null when one is no unit, the two measure different things, or the number is unreadable.
 */
export function convertUnit(value: string, from: string, to: string): string | null {
  const decimal = parseDecimal(value);
  const [source, target] = [unitOf(from), unitOf(to)];
  if (!decimal || !source || !target) return null;
  if (from === to) return decimalText(decimal);
  if (source.isSpecial_ || target.isSpecial_) return convertedOnScale(value, from, to);
  return measureTheSame(source, target) ? scaled(decimal, source, target) : null;
}

/** The dimension of a plain number may be null. */
function measureTheSame(source: Unit, target: Unit): boolean {
  const [one, other] = [source.dim_, target.dim_];
  return one && other ? one.equals(other) : (one ?? other ?? noDimension).isZero();
}
const noDimension = { isZero: () => true };

/** Temperatures, levels: not a plain ratio, so a double with its uncertain digits cut off. */
function convertedOnScale(value: string, from: string, to: string): string | null {
  const { status, toVal } = ucum().convertUnitTo(from, Number(value), to);
  if (status !== 'succeeded' || toVal === null || !Number.isFinite(toVal)) return null;
  const decimal = parseDecimal(toVal.toPrecision(certainDigits));
  return decimal && decimalText(decimal);
}

function scaled(
  { coefficient, decimals }: { coefficient: bigint; decimals: number },
  source: Unit,
  target: Unit,
): string | null {
  const ratio = source.magnitude_ / target.magnitude_;
  const divides = ratio < 1;
  const factor = parseDecimal((divides ? 1 / ratio : ratio).toPrecision(certainDigits));
  if (!factor || factor.coefficient <= 0n) return null;
  if (!divides) {
    return decimalText({
      coefficient: coefficient * factor.coefficient,
      decimals: decimals + factor.decimals,
    });
  }
  const shift = 10n ** (quotientDecimals + BigInt(factor.decimals));
  return decimalText({
    coefficient: (coefficient * shift) / factor.coefficient,
    decimals: decimals + Number(quotientDecimals),
  });
}
