import { forecastRemaining } from '../../src/domain/estimates/forecastRemaining.js';

// 10,000 trials of 200 tasks: the forecast with PERT betas, tables and all, against a bare loop of
// triangular samples over a typed array. Both take turns; the quickest turn of each counts, as
// whatever else the machine does can only slow a turn down.
const trials = 10_000;
const taskCount = 200;
const turns = 15;
const goal = 4;

interface Points {
  a: number;
  m: number;
  b: number;
}

/** Other tasks in every turn, so that no table is there already. */
const someTasks = (): Points[] =>
  Array.from({ length: taskCount }, () => {
    const a = 1 + 3 * Math.random();
    const m = a + 3 * Math.random();
    return { a, m, b: m + 0.5 + 8 * Math.random() };
  });

function bareTriangles(tasks: readonly Points[]): number {
  const totals = new Float64Array(trials);
  for (const { a, m, b } of tasks) {
    const corner = (m - a) / (b - a);
    const rising = (b - a) * (m - a);
    const falling = (b - a) * (b - m);
    for (let trial = 0; trial < trials; trial += 1) {
      const u = Math.random();
      totals[trial]! += u < corner ? a + Math.sqrt(u * rising) : b - Math.sqrt((1 - u) * falling);
    }
  }
  return totals[0]!;
}

function forecast(tasks: readonly Points[], seed: string): number {
  const told = tasks.map(({ a, m, b }, index) => ({
    id: `task-${index}`,
    state: 'NOT_STARTED' as const,
    estimate: { optimisticHours: a, likelyHours: m, pessimisticHours: b },
    spentHours: 0,
  }));
  return forecastRemaining(told, { seed, trials }).p80Hours;
}

/** Prints the ratio of the forecast's time to the bare loop's. */
export function benchTrials(): void {
  let [bareMs, forecastMs] = [Infinity, Infinity];
  let sum = 0;
  for (let turn = 0; turn < turns; turn += 1) {
    const tasks = someTasks();
    const start = performance.now();
    sum += bareTriangles(tasks);
    const middle = performance.now();
    sum += forecast(tasks, `turn ${turn}`);
    const end = performance.now();
    bareMs = Math.min(bareMs, middle - start);
    forecastMs = Math.min(forecastMs, end - middle);
  }
  if (!(sum > 0)) throw new Error('The trials gave no hours.');
  const ratio = forecastMs / bareMs;
  console.log(
    `T  10,000 trials × 200 tasks, PERT-beta with its tables: ${ratio.toFixed(2)} times a bare ` +
      `triangular loop (${forecastMs.toFixed(1)} and ${bareMs.toFixed(1)} ms, quickest of ${turns}); ` +
      `goal ≤ ${goal} ${ratio <= goal ? 'met' : 'NOT met'}`,
  );
}
