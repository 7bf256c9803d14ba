import { z } from 'zod';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { DemoClock } from './demoClock.js';
import type { DemoNames } from './demoNames.js';

/** What a verb of the story has at hand. */
export interface Telling {
  /** Its `now` is the instant of the event. */
  work: UnitOfWork;
  clock: DemoClock;
  names: DemoNames;
  /** The inventory number that the event is about. */
  item: string;
}

/** A kind of event: what is written of it in the files, and how it is recorded. */
export interface StoryVerb {
  /** What the history calls it. */
  action: string;
  shape: z.ZodType<EventTimes>;
  play(telling: Telling, event: EventTimes): Promise<unknown>;
}

/** Written of every event; `at` is when it was recorded, `until` when it ended (a session). */
export interface EventTimes {
  at: string;
  until?: string | undefined;
}

export const text = z.string().trim().min(1);

/**
 * @param action the write verb that it comes to, for the history.
 * @param fields what is written beside the time, the verb and the item.
 */
export function storyVerb<Fields extends z.ZodRawShape>(
  action: string,
  fields: Fields,
  play: (telling: Telling, event: z.infer<z.ZodObject<Fields>> & EventTimes) => Promise<unknown>,
): StoryVerb {
  const shape = z.strictObject({ ...fields, at: text });
  // The shape has checked what `play` is handed: the cast only joins the two.
  return { action, shape, play } as unknown as StoryVerb;
}
