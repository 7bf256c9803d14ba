import type { EventSource } from './eventSource.js';

const ofItem = (table: string): string => `${table} JOIN item ON item.id = ${table}.item_id`;
const partyOf = (column: string): string => `LEFT JOIN party ON party.id = ${column}`;

const check = (kind: 'CHECK_PASSED' | 'CHECK_FAILED', isPassed: string): EventSource => ({
  kind,
  table: 'final_check',
  from: `${ofItem('final_check')} ${partyOf('final_check.checked_by_id')}`,
  at: 'final_check.checked_at',
  where: `final_check.is_passed = ${isPassed}`,
  columns: { subject: 'final_check.procedure', person: 'party.name' },
});

const fitting = `${ofItem('fitting')} JOIN component ON component.id = fitting.component_id
  LEFT JOIN part_type ON part_type.id = component.part_type_id`;
const part = { subject: 'part_type.designation', detail: 'fitting.designator' };

const loan = `${ofItem('loan')} ${partyOf('loan.borrower_id')}`;
const lent = { detail: 'loan.direction', person: 'party.name', place: 'loan.place_name' };

/** Where each kind of event is found. Losses and thefts are left out: they are nobody's business. */
export const eventSources: readonly EventSource[] = [
  {
    kind: 'SESSION_FINISHED',
    table: 'work_session',
    from: `${ofItem('work_session')} ${partyOf('work_session.person_id')}
      LEFT JOIN task ON task.id = work_session.task_id`,
    at: 'work_session.ended_at',
    where: 'work_session.ended_at IS NOT NULL',
    columns: { subject: 'task.title', person: 'party.name' },
  },
  {
    kind: 'TASK_FINISHED',
    table: 'task',
    from: 'task JOIN project ON project.id = task.project_id JOIN item ON item.id = project.item_id',
    at: 'task.finished_at',
    where: `task.finished_at IS NOT NULL AND task.status = 'DONE'`,
    columns: { subject: 'task.title', detail: 'project.title' },
  },
  { kind: 'PART_FITTED', table: 'fitting', from: fitting, at: 'fitting.fitted_at', columns: part },
  {
    kind: 'PART_REMOVED',
    table: 'fitting',
    from: fitting,
    at: 'fitting.removed_at',
    where: 'fitting.removed_at IS NOT NULL',
    columns: part,
  },
  {
    kind: 'SET_ACQUIRED',
    table: 'lot_line',
    from: `${ofItem('lot_line')} JOIN acquisition ON acquisition.id = lot_line.acquisition_id
      ${partyOf('acquisition.other_party_id')}`,
    at: 'acquisition.acquired_on',
    isDay: true,
    columns: {
      person: 'party.name',
      place: 'acquisition.venue',
      minorUnits: 'acquisition.price_minor_units',
      currency: 'acquisition.currency',
    },
  },
  check('CHECK_PASSED', 'TRUE'),
  check('CHECK_FAILED', 'FALSE'),
  {
    kind: 'HAZARD_RAISED',
    table: 'hazard',
    from: ofItem('hazard'),
    at: 'hazard.raised_at',
    columns: { subject: 'hazard.kind' },
  },
  {
    kind: 'HAZARD_CLEARED',
    table: 'hazard',
    from: `${ofItem('hazard')} ${partyOf('hazard.cleared_by_id')}`,
    at: 'hazard.cleared_at',
    where: 'hazard.cleared_at IS NOT NULL',
    columns: { subject: 'hazard.kind', detail: 'hazard.cleared_by_check', person: 'party.name' },
  },
  {
    kind: 'MAINTENANCE_DONE',
    table: 'maintenance_done',
    from: `maintenance_done JOIN maintenance_rule ON maintenance_rule.id = maintenance_done.rule_id
      JOIN item ON item.id = maintenance_rule.item_id ${partyOf('maintenance_done.done_by_id')}`,
    at: 'maintenance_done.done_at',
    where: 'maintenance_done.withdrawn_at IS NULL',
    columns: { subject: 'maintenance_rule.title', person: 'party.name' },
  },
  {
    kind: 'RESTORATION_COMPLETED',
    table: 'project',
    from: ofItem('project'),
    at: 'project.closed_at',
    where: `project.closed_at IS NOT NULL AND project.status = 'COMPLETED'`,
    columns: { subject: 'project.title' },
  },
  { kind: 'LENT', table: 'loan', from: loan, at: 'loan.lent_on', isDay: true, columns: lent },
  {
    kind: 'BACK_FROM_LOAN',
    table: 'loan',
    from: loan,
    at: 'loan.returned_on',
    isDay: true,
    where: 'loan.returned_on IS NOT NULL',
    columns: lent,
  },
  {
    kind: 'PARTED_WITH',
    table: 'disposal_line',
    from: `${ofItem('disposal_line')} JOIN disposal ON disposal.id = disposal_line.disposal_id
      ${partyOf('disposal.to_party_id')}`,
    at: 'disposal.disposed_on',
    isDay: true,
    columns: {
      detail: 'disposal.kind',
      person: 'party.name',
      place: 'disposal.venue',
      minorUnits: 'disposal_line.price_minor_units',
      currency: 'disposal.currency',
    },
  },
];
