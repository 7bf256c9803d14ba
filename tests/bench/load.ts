import { Agent, request } from 'node:http';

const connections = 8;
const agent = new Agent({ keepAlive: true, maxSockets: connections });

/** One POST; resolves with the answer's text. */
export function post(port: number, path: string, body: string): Promise<string> {
  return new Promise((resolve, reject) => {
    const sent = request(
      {
        agent,
        port,
        path,
        host: '127.0.0.1',
        method: 'POST',
        headers: { 'content-type': 'application/json', 'content-length': Buffer.byteLength(body) },
      },
      (response) => {
        const chunks: Buffer[] = [];
        response.on('data', (chunk: Buffer) => chunks.push(chunk));
        response.on('end', () => {
          const text = Buffer.concat(chunks).toString();
          if (response.statusCode === 200) resolve(text);
          else reject(new Error(`${response.statusCode ?? '?'}: ${text.slice(0, 300)}`));
        });
      },
    );
    sent.on('error', reject);
    sent.end(body);
  });
}

/** Requests answered a second, by eight connections that each wait for their answer. */
export async function rateOf(
  port: number,
  path: string,
  bodies: readonly string[],
  milliseconds: number,
): Promise<number> {
  const started = performance.now();
  let answered = 0;
  const keepAsking = async (offset: number): Promise<void> => {
    for (let turn = offset; performance.now() - started < milliseconds; turn += connections) {
      await post(port, path, bodies[turn % bodies.length] ?? '');
      answered += 1;
    }
  };
  await Promise.all(Array.from({ length: connections }, (_, offset) => keepAsking(offset)));
  return answered / ((performance.now() - started) / 1000);
}
