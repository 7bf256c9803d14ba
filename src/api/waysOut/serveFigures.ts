import { readFileSync } from 'node:fs';
import { Router } from 'express';
import { readCollectionFigures } from '../../features/figures/collectionFigures.reads.js';
import { figureFamilies } from '../../features/figures/figureFamilies.js';
import { openMetricsText, openMetricsType } from '../../features/figures/openMetricsText.js';
import { packageFolder } from '../../features/packageFolder.js';
import type { ApiContext } from '../kit/apiContext.js';
import { admitted } from './admitted.js';

const { version } = JSON.parse(readFileSync(packageFolder('package.json'), 'utf8')) as {
  version: string;
};

/** `/metrics`: the figures of the collection as OpenMetrics. */
export function serveFigures(contextNow: () => ApiContext): Router {
  const router = Router();
  const door = { scope: 'FIGURES', mayBeInAddress: false, contextNow } as const;
  router.get(
    '/metrics',
    admitted(door, async (_request, response, { shows }, { database, nowMs }) => {
      const figures = await readCollectionFigures(database.reader, nowMs);
      const text = openMetricsText(figureFamilies(figures, shows, version));
      response.set('Content-Type', openMetricsType).end(text);
    }),
  );
  return router;
}
