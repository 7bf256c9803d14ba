import { readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { v5 as uuidv5 } from 'uuid';
import { z } from 'zod';
import { seedFolder } from '../hazards/seedFolder.js';
import { HazardKind } from '../hazards/hazardKind.js';
import { ItemKind } from '../items/itemKind.js';
import { readSeedFile } from '../reference/readSeedFile.js';
import { EarningRuleKind } from '../tasks/earningRuleKind.js';
import { TaskKind } from '../tasks/taskKind.js';
import type { TemplateTask } from './templateTask.js';

const text = z.string().trim().min(1);

const taskShape = z.strictObject({
  /** What other tasks of the file call it. */
  key: text,
  title: text,
  kind: z.enum(TaskKind),
  /** Hours if all goes well, most likely, and if little does. */
  hours: z.tuple([z.number().positive(), z.number().positive(), z.number().positive()]),
  rule: z.enum(EarningRuleKind).default('ZERO_HUNDRED'),
  /** Title → weight. */
  steps: z.record(text, z.int().positive()).default({}),
  after: z.array(text).default([]),
  hazards: z.array(z.enum(HazardKind)).default([]),
  note: text.optional(),
});

const templateShape = z.strictObject({
  title: text,
  description: text,
  itemKind: z.enum(ItemKind).nullable().default(null),
  tasks: z.array(taskShape).min(1),
});

/** A template that comes with the program: a plain file in `seed/templates`. */
export interface ShippedTemplate {
  /** The same on every machine: made from the name of the file. */
  id: string;
  title: string;
  description: string;
  itemKind: ItemKind | null;
  tasks: TemplateTask[];
}

/** Our own; it only has to stay the same. */
const namespace = '6f1c1a52-52c8-4b7e-9d0e-6a6f5b3f2c10';

/**
 * Reads the templates: one YAML file each.
 * @throws Error that names the file and what is wrong with it.
 */
export function loadShippedTemplates(folder: string): ShippedTemplate[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith('.yaml'))
    .sort()
    .map((file) => templateIn(folder, file));
}

function templateIn(folder: string, file: string): ShippedTemplate {
  const path = join(folder, file);
  const { title, description, itemKind, tasks } = readSeedFile(path, templateShape);
  const positions = new Map(tasks.map(({ key }, position) => [key, position]));
  if (positions.size < tasks.length) throw new Error(`${path}: two tasks have one key.`);
  return {
    id: uuidv5(basename(file, '.yaml'), namespace),
    title,
    description,
    itemKind,
    tasks: tasks.map(
      ({ hours, steps, after, hazards, note, title: taskTitle, kind, rule }, own) => ({
        title: taskTitle,
        kind,
        optimisticMinutes: Math.round(hours[0] * 60),
        likelyMinutes: Math.round(hours[1] * 60),
        pessimisticMinutes: Math.round(hours[2] * 60),
        rule,
        steps: Object.entries(steps).map(([name, weight]) => ({ title: name, weight })),
        predecessorPositions: after.map((key) => {
          const position = positions.get(key);
          // Only earlier ones: so no file can make a circle.
          if (position === undefined || position >= own) {
            throw new Error(
              `${path}: “${taskTitle}” comes after “${key}”, which is not before it.`,
            );
          }
          return position;
        }),
        hazardKinds: hazards,
        note: note ?? null,
      }),
    ),
  };
}

/** Read once, at the start. */
export const shippedTemplates: readonly ShippedTemplate[] = loadShippedTemplates(
  seedFolder('templates'),
);
