/** Every page of the dashboard, with what is on it once its answer has come. */
export const pages = [
  { name: 'collection-shelf', address: '/collection', isThereWhen: 'h2:has-text("R-001")' },
  { name: 'collection-table', address: '/collection?as=table', isThereWhen: 'td:text("R-001")' },
];
