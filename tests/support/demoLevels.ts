import type { TestApi } from './testApi.js';

/** Every level with the rigs of the demo collection that are on it. */
export const demoLevels = {
  ON_AIR_READY: ['R-001', 'R-003', 'R-009'],
  CHECKS_DUE: ['R-002'],
  NOT_READY: ['R-004', 'R-005', 'R-007', 'R-008', 'R-010', 'R-012'],
  DO_NOT_CONNECT: ['R-006'],
};

export async function rigsByLevel(api: TestApi): Promise<Record<string, string[]>> {
  const { rigs } = await api.ask(
    '{ rigs(first: 50) { nodes { inventoryNumber readiness { level } } } }',
  );
  const found: Record<string, string[]> = {};
  for (const { inventoryNumber, readiness } of rigs.nodes) {
    (found[readiness.level] ??= []).push(inventoryNumber);
  }
  return found;
}
