import { TableColumn, type MigrationInterface, type QueryRunner } from 'typeorm';

const columns = [
  new TableColumn({ name: 'tube_base', type: 'varchar', length: '10', isNullable: true }),
  new TableColumn({ name: 'tube_class', type: 'varchar', length: '30', isNullable: true }),
  new TableColumn({ name: 'tube_source', type: 'text', isNullable: true }),
];

export class OwnTubeBase1764200000541 implements MigrationInterface {
  name = 'OwnTubeBase1764200000541';

  async up(runner: QueryRunner): Promise<void> {
    for (const column of columns) await runner.addColumn('part_type', column);
  }

  async down(runner: QueryRunner): Promise<void> {
    for (const { name } of columns) await runner.dropColumn('part_type', name);
  }
}
