import { Column, ForeignKey, Index, PrimaryColumn } from 'typeorm';
import { safeInteger } from './safeInteger.js';

interface Optional {
  nullable?: boolean;
}

/** UUID version 7 as text: the order of ids is the order in which records were made. */
export const IdColumn = (): PropertyDecorator => PrimaryColumn({ type: 'varchar', length: 36 });

/**
 * The id of a row in another table, held by a foreign key and indexed (PostgreSQL does not index
 * foreign keys by itself). Nothing cascades: records are retired, never silently deleted.
 */
export const ReferenceColumn =
  (table: string, options: Optional = {}): PropertyDecorator =>
  (target, property) => {
    Column({ type: 'varchar', length: 36, ...options })(target, property);
    ForeignKey(table)(target, property);
    Index()(target, property);
  };

/** An instant in UTC, ISO 8601 with milliseconds (`2026-03-01T18:30:00.000Z`): sorts as text. */
export const InstantColumn = (options: Optional = {}): PropertyDecorator =>
  Column({ type: 'varchar', length: 24, ...options });

/** A calendar date without a zone, ISO 8601 (`2026-03-01`). */
export const LocalDateColumn = (options: Optional = {}): PropertyDecorator =>
  Column({ type: 'varchar', length: 10, ...options });

/** A short word or name; words from a list are checked by the API, not by the engine. */
export const WordColumn = (
  options: Optional & { length?: number; default?: string } = {},
): PropertyDecorator => Column({ type: 'varchar', length: 200, ...options });

/** Running text, or an exact decimal kept as the person wrote it. */
export const TextColumn = (options: Optional = {}): PropertyDecorator =>
  Column({ type: 'text', ...options });

/** A whole number below 2^31. */
export const CountColumn = (options: Optional & { default?: number } = {}): PropertyDecorator =>
  Column({ type: 'integer', ...options });

/** A whole number that may pass 2^31 (money in minor units), up to 2^53 − 1. */
export const LargeCountColumn = (options: Optional = {}): PropertyDecorator =>
  Column({ type: 'bigint', transformer: safeInteger, ...options });

/** True or false; never null. */
export const FlagColumn = (): PropertyDecorator => Column({ type: 'boolean' });

/** A small structured value that is never searched in SQL. */
export const JsonColumn = (options: Optional = {}): PropertyDecorator =>
  Column({ type: 'simple-json', ...options });
