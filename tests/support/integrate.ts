/** Simpson's rule over many equal steps: slow and plain, to check tables by another route. */
export function integrate(
  integrand: (at: number) => number,
  from: number,
  to: number,
  steps = 20_000,
): number {
  const width = (to - from) / steps;
  let sum = integrand(from) + integrand(to);
  for (let step = 1; step < steps; step += 1) {
    sum += (step % 2 === 1 ? 4 : 2) * integrand(from + step * width);
  }
  return (sum * width) / 3;
}
