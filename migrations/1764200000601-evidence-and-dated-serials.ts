import type { MigrationInterface, QueryRunner } from 'typeorm';
import { instant, kept, localDate, orNull, reference, text, word } from './support/columns.js';
import { createTable } from './support/createTable.js';

/** What a link of the chain rests on, who else had a part in it, and serial numbers of known date. */
export class EvidenceAndDatedSerials1764200000601 implements MigrationInterface {
  name = 'EvidenceAndDatedSerials1764200000601';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'evidence',
      [
        ...kept(),
        reference('event_id', 'provenance_event', orNull),
        reference('claim_id', 'claim', orNull),
        word('bearing', 20),
        word('kind', 30),
        word('strength', 20),
        text('description'),
        text('kept_at', orNull),
        instant('withdrawn_at', orNull),
        text('withdrawn_reason', orNull),
      ],
      { checks: { evidence_bears_on_one: '(event_id IS NULL) <> (claim_id IS NULL)' } },
    );
    await createTable(runner, 'event_party', [
      ...kept(),
      reference('event_id', 'provenance_event'),
      reference('party_id', 'party'),
      word('role', 20),
      text('note', orNull),
    ]);
    await createTable(runner, 'dated_serial', [
      ...kept(),
      reference('model_id', 'model'),
      word('serial_number', 200),
      word('date_edtf', 80),
      localDate('earliest_on', orNull),
      localDate('latest_on', orNull),
      text('source'),
      instant('withdrawn_at', orNull),
    ]);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('dated_serial');
    await runner.dropTable('event_party');
    await runner.dropTable('evidence');
  }
}
