import type { TestApi } from './testApi.js';

export type SpareStory = ReturnType<typeof spareStory>;

const lotFields = `id version description condition quantity drawnQuantity onHandQuantity
  reservedQuantity availableQuantity receivedOn component { id } place { name }
  cost { amounts { amount currency } } reservations { id quantity openQuantity releasedAt }`;
const drawFields = `id version quantity reason lot { id onHandQuantity }
  cost { amounts { amount currency } basis { method } }`;
const fittingFields = `id version designator removedAt disposition
  component { id marking origin partType { designation } } draws { ${drawFields} }`;

/** What is done with spares, told in short; each answers with the payload. */
export function spareStory(api: TestApi) {
  const act =
    (name: string, inputType: string, fields: string) =>
    async (input: Record<string, unknown>): Promise<any> =>
      (
        await api.ask(
          `mutation ($input: ${inputType}!) { ${name}(input: $input) {
            ${fields} problems { code message path } } }`,
          { input },
        )
      )[name];
  const tryToAdd = act('addStock', 'AddStockInput', `stockLot { ${lotFields} }`);
  const openProject = act('openProject', 'OpenProjectInput', 'project { id }');
  const addTask = act('addTask', 'AddTaskInput', 'task { id }');
  const createPartType = act('createPartType', 'CreatePartTypeInput', 'partType { id }');
  return {
    tryToAdd,
    add: async (input: Record<string, unknown>): Promise<any> => {
      const { stockLot, problems } = await tryToAdd(input);
      if (!stockLot) throw new Error(JSON.stringify(problems));
      return stockLot;
    },
    partType: async (designation: string): Promise<string> =>
      (await createPartType({ kind: 'TUBE', designation })).partType.id,
    task: async (itemId: string): Promise<string> => {
      const { project } = await openProject({
        itemId,
        title: 'Restore',
        targetStandard: 'WORKING',
      });
      const estimate = { optimisticHours: 1, likelyHours: 2, pessimisticHours: 6 };
      const { task } = await addTask({ projectId: project.id, task: { title: 'Fit', estimate } });
      return task.id;
    },
    finish: (id: string) => act('finishTask', 'TaskStatusInput', 'task { id }')({ id }),
    reserve: act(
      'reserveStock',
      'ReserveStockInput',
      'reservations { id version quantity openQuantity lot { id } }',
    ),
    changeReservation: act(
      'changeReservation',
      'ChangeReservationInput',
      'reservation { id version quantity openQuantity }',
    ),
    draw: act('drawStock', 'DrawStockInput', `draws { ${drawFields} }`),
    changeDraw: act('changeStockDraw', 'ChangeStockDrawInput', `draw { ${drawFields} }`),
    changeLot: act('changeStockLot', 'ChangeStockLotInput', `stockLot { ${lotFields} }`),
    fit: act('fitComponent', 'FitComponentInput', `fitting { ${fittingFields} }`),
    remove: act('removeComponent', 'RemoveComponentInput', `fitting { ${fittingFields} }`),
    changeFitting: act('changeFitting', 'ChangeFittingInput', `fitting { ${fittingFields} }`),
    lot: async (id: string): Promise<any> =>
      (
        await api.ask(`query ($id: ID!) { node(id: $id) { ... on StockLot { ${lotFields} } } }`, {
          id,
        })
      ).node,
    lots: async (filter: Record<string, unknown>): Promise<any[]> =>
      (
        await api.ask(
          `query ($filter: StockFilter!) { stockLots(filter: $filter) { totalCount nodes { ${lotFields} } } }`,
          { filter },
        )
      ).stockLots.nodes,
  };
}
