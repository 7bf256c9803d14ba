const central = [
  [
    2509.0809287301226727, 33430.575583588128105, 67265.770927008700853, 45921.953931549871457,
    13731.693765509461125, 1971.5909503065514427, 133.14166789178437745, 3.387132872796366608,
  ],
  [
    5226.495278852854561, 28729.085735721942674, 39307.89580009271061, 21213.794301586595867,
    5394.1960214247511077, 687.1870074920579083, 42.313330701600911252, 1,
  ],
] as const;
const outer = [
  [
    7.7454501427834140764e-4, 0.0227238449892691845833, 0.24178072517745061177,
    1.27045825245236838258, 3.64784832476320460504, 5.7694972214606914055, 4.6303378461565452959,
    1.42343711074968357734,
  ],
  [
    1.05075007164441684324e-9, 5.475938084995344946e-4, 0.0151986665636164571966,
    0.14810397642748007459, 0.68976733498510000455, 1.6763848301838038494, 2.05319162663775882187,
    1,
  ],
] as const;
const far = [
  [
    2.01033439929228813265e-7, 2.71155556874348757815e-5, 0.0012426609473880784386,
    0.026532189526576123093, 0.29656057182850489123, 1.7848265399172913358, 5.4637849111641143699,
    6.6579046435011037772,
  ],
  [
    2.04426310338993978564e-15, 1.4215117583164458887e-7, 1.8463183175100546818e-5,
    7.868691311456132591e-4, 0.0148753612908506148525, 0.13692988092273580531,
    0.59983220655588793769, 1,
  ],
] as const;

/**
 * The standard normal quantile, to about sixteen digits.
 *
 * Source: M. J. Wichura, Algorithm AS 241 (PPND16), Applied Statistics 37(3), 1988, p. 477-484.
 *
 * @param probability strictly between 0 and 1.
 */
export function normalQuantile(probability: number): number {
  const offset = probability - 0.5;
  if (Math.abs(offset) <= 0.425) return offset * ratio(central, 0.180625 - offset * offset);
  const depth = Math.sqrt(-Math.log(offset < 0 ? probability : 1 - probability));
  const size = depth <= 5 ? ratio(outer, depth - 1.6) : ratio(far, depth - 5);
  return offset < 0 ? -size : size;
}

type Coefficients = typeof central | typeof outer | typeof far;

function ratio([above, below]: Coefficients, x: number): number {
  const [a7, a6, a5, a4, a3, a2, a1, a0] = above;
  const [b7, b6, b5, b4, b3, b2, b1, b0] = below;
  return (
    (((((((a7 * x + a6) * x + a5) * x + a4) * x + a3) * x + a2) * x + a1) * x + a0) /
    (((((((b7 * x + b6) * x + b5) * x + b4) * x + b3) * x + b2) * x + b1) * x + b0)
  );
}
