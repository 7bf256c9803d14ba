import { Router } from 'express';
import { GraphQLError } from 'graphql';
import { writeSchedule } from '../features/insurance/writeSchedule.js';
import type { ApiContext } from './kit/apiContext.js';

const mediaTypes = { csv: 'text/csv; charset=utf-8', pdf: 'application/pdf' } as const;

/** Insurance schedules as files: `/download/insurance-schedule.pdf?items=R-001,R-002&place=Attic`. */
export function serveSchedules(contextNow: () => ApiContext): Router {
  const router = Router();
  for (const format of ['csv', 'pdf'] as const) {
    router.get(`/insurance-schedule.${format}`, async ({ query }, response) => {
      const { items, place } = query;
      const numbers = typeof items === 'string' ? items.split(',').map((one) => one.trim()) : null;
      const placeName = typeof place === 'string' ? place : null;
      const bytes = await writeSchedule(contextNow(), { numbers, placeName }, format).catch(
        (error: unknown) => {
          if (error instanceof GraphQLError) return error;
          throw error;
        },
      );
      if (bytes instanceof GraphQLError) {
        response.status(400).type('text/plain').send(`${bytes.message}\n`);
        return;
      }
      response
        .set('Content-Type', mediaTypes[format])
        .set('Content-Disposition', `attachment; filename="insurance-schedule.${format}"`)
        .set('Cache-Control', 'no-store')
        .end(bytes);
    });
  }
  return router;
}
