import { TableColumn, type MigrationInterface, type QueryRunner } from 'typeorm';

export class PositionWeight1764200000530 implements MigrationInterface {
  name = 'PositionWeight1764200000530';

  async up(runner: QueryRunner): Promise<void> {
    const weight = new TableColumn({ name: 'weight', type: 'integer', isNullable: true });
    await runner.addColumn('fit_out_position', weight);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropColumn('fit_out_position', 'weight');
  }
}
