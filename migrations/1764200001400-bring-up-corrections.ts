import type { MigrationInterface, QueryRunner } from 'typeorm';
import { instant, orNull, text } from './support/columns.js';

/** A step of a bring-up that was written down by mistake is put right or taken back, never lost. */
export class BringUpCorrections1764200001400 implements MigrationInterface {
  name = 'BringUpCorrections1764200001400';

  async up(runner: QueryRunner): Promise<void> {
    await runner.addColumn('bring_up_step', text('earlier_versions', orNull).column);
    await runner.addColumn('bring_up_step', instant('withdrawn_at', orNull).column);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropColumn('bring_up_step', 'withdrawn_at');
    await runner.dropColumn('bring_up_step', 'earlier_versions');
  }
}
