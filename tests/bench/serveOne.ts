import 'reflect-metadata';
import { serveApi } from '../../src/api/serveApi.js';
import { openCollection } from '../../src/features/openCollection.js';
import { benchNowMs } from './benchClock.js';
import { serveReference } from './reference.js';

/** One of the two servers, in a process of its own; prints its port. */
const [which, path = ''] = process.argv.slice(2);
if (which === 'reference') {
  process.stdout.write(`${await serveReference(path)}\n`);
} else {
  const running = await serveApi(await openCollection(`sqlite:${path}`), {
    host: '127.0.0.1',
    attachmentsFolder: `${path}-attachments`,
    port: 0,
    allowedHosts: [],
    clock: () => benchNowMs,
    log: (id, error) => {
      console.error(id, error);
    },
  });
  process.stdout.write(`${new URL(running.url).port}\n`);
}
