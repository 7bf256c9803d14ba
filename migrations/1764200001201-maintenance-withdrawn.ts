import type { MigrationInterface, QueryRunner } from 'typeorm';
import { instant, orNull } from './support/columns.js';

/** Maintenance that was written down by mistake is taken back, not deleted. */
export class MaintenanceWithdrawn1764200001201 implements MigrationInterface {
  name = 'MaintenanceWithdrawn1764200001201';

  async up(runner: QueryRunner): Promise<void> {
    await runner.addColumn('maintenance_done', instant('withdrawn_at', orNull).column);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropColumn('maintenance_done', 'withdrawn_at');
  }
}
