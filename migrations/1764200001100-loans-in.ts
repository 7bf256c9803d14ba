import { TableColumn, type MigrationInterface, type QueryRunner } from 'typeorm';

const direction = new TableColumn({
  name: 'direction',
  type: 'varchar',
  length: '10',
  default: "'OUT'",
});

/** Things that are lent to the collection; every loan so far went out. */
export class LoansIn1764200001100 implements MigrationInterface {
  name = 'LoansIn1764200001100';

  async up(runner: QueryRunner): Promise<void> {
    await runner.addColumn('loan', direction);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropColumn('loan', 'direction');
  }
}
