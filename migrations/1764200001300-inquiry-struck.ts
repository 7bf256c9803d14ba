import type { MigrationInterface, QueryRunner } from 'typeorm';
import { instant, orNull } from './support/columns.js';

/** An inquiry that was written down by mistake is struck out, not deleted. */
export class InquiryStruck1764200001300 implements MigrationInterface {
  name = 'InquiryStruck1764200001300';

  async up(runner: QueryRunner): Promise<void> {
    await runner.addColumn('inquiry', instant('struck_at', orNull).column);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropColumn('inquiry', 'struck_at');
  }
}
