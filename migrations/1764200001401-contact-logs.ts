import type { MigrationInterface, QueryRunner } from 'typeorm';
import { orNull, text } from './support/columns.js';

/** A use that was counted from a contact log knows its contacts again, and keeps nobody's call. */
export class ContactLogs1764200001401 implements MigrationInterface {
  name = 'ContactLogs1764200001401';

  async up(runner: QueryRunner): Promise<void> {
    await runner.addColumn('on_air_use', text('contact_keys', orNull).column);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropColumn('on_air_use', 'contact_keys');
  }
}
