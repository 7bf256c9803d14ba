import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isDeepStrictEqual } from 'node:util';
import { buildDataSet, counts } from './buildDataSet.js';
import { post, rateOf } from './load.js';
import { benchTrials } from './trialsBench.js';

// Ratios of one run: the bare server and the API take turns on the same data, round by round, so
// that whatever else the machine does meets both. Absolute figures are of this machine alone.
const rounds = 7;
const turnMs = 1500;
const goals = { A: 0.6, C: 0.5 };

const operation = (name: string): string =>
  readFileSync(join('schema', 'operations', `${name}.graphql`), 'utf8');

const questions = {
  A: [{ query: operation('rigs-page'), variables: { first: 50 } }],
  C: Array.from({ length: 50 }, (_, n) => ({
    query: operation('rig-whole'),
    variables: { inventoryNumber: `R-${String(n * 40).padStart(4, '0')}` },
  })),
};

benchTrials();
const folder = mkdtempSync(join(tmpdir(), 'reglow-bench-'));
const servers: ChildProcess[] = [];
try {
  const path = join(folder, 'bench.sqlite');
  console.log(
    `Filling a collection: ${counts.rigs} rigs, ${counts.rigs * counts.parts} components, ` +
      `${counts.rigs * counts.tasks} tasks, ${counts.rigs * counts.sessions} sessions …`,
  );
  const began = performance.now();
  await buildDataSet(path);
  console.log(`Filled and computed in ${Math.round((performance.now() - began) / 1000)} s.`);
  const reference = await start('reference', path);
  const api = await start('api', path);
  for (const letter of ['A', 'C'] as const) {
    const bodies = questions[letter].map((question) => JSON.stringify(question));
    for (const body of bodies) await mustAgree(reference, api, body);
    const ratios: number[] = [];
    const rates: [number, number][] = [];
    for (let round = 0; round <= rounds; round++) {
      const bare = await rateOf(reference, '/', bodies, turnMs);
      const ours = await rateOf(api, '/graphql', bodies, turnMs);
      if (round === 0) continue;
      ratios.push(ours / bare);
      rates.push([bare, ours]);
    }
    report(letter, ratios, rates);
  }
} finally {
  for (const server of servers) server.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
}

async function start(which: string, path: string): Promise<number> {
  const script = fileURLToPath(new URL('serveOne.js', import.meta.url));
  const server = spawn(process.execPath, [script, which, path], {
    stdio: ['ignore', 'pipe', 'inherit'],
    env: { ...process.env, NODE_ENV: 'production' },
  });
  servers.push(server);
  return new Promise((resolve, reject) => {
    server.stdout.once('data', (data: Buffer) => {
      resolve(Number(data.toString()));
    });
    server.once('exit', (code) => {
      reject(new Error(`the ${which} server ended with ${code ?? 'a signal'}`));
    });
  });
}

/** A ratio means something only when both say the same. */
async function mustAgree(reference: number, api: number, body: string): Promise<void> {
  const [bare, ours] = [
    JSON.parse(await post(reference, '/', body)) as unknown,
    JSON.parse(await post(api, '/graphql', body)) as unknown,
  ];
  if (!isDeepStrictEqual(bare, ours)) {
    throw new Error(
      `The answers differ:\n${JSON.stringify(bare).slice(0, 2000)}\n${JSON.stringify(ours).slice(0, 2000)}`,
    );
  }
}

function report(letter: 'A' | 'C', ratios: number[], rates: [number, number][]): void {
  const median = (values: readonly number[]): number =>
    [...values].sort((left, right) => left - right)[Math.floor(values.length / 2)] ?? NaN;
  const names = { A: 'page of 50 sets with computed fields', C: 'one set whole' };
  const bare = median(rates.map(([rate]) => rate));
  const ours = median(rates.map(([, rate]) => rate));
  const spread = `${Math.min(...ratios).toFixed(2)}–${Math.max(...ratios).toFixed(2)}`;
  const isMet = median(ratios) >= goals[letter];
  console.log(
    `${letter}  ${names[letter]}: ${median(ratios).toFixed(2)} of the bare server ` +
      `(${spread} over ${rounds} rounds; ${bare.toFixed(0)} and ${ours.toFixed(0)} requests a second); ` +
      `goal ${goals[letter]} ${isMet ? 'met' : 'NOT met'}`,
  );
}
