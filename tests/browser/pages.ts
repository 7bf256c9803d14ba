/** Every page of the dashboard, with what is on it once its answer has come. */
export const pages = [
  { name: 'tonight', address: '/', isThereWhen: 'h3' },
  { name: 'tonight-band', address: '/?band=40m&mode=CW&watts=50', isThereWhen: '#on-the-band' },
  { name: 'collection-shelf', address: '/collection', isThereWhen: 'h2:has-text("R-001")' },
  { name: 'collection-table', address: '/collection?as=table', isThereWhen: 'td:text("R-001")' },
  { name: 'one-set', address: '/sets/R-005', isThereWhen: '#story li' },
  { name: 'one-set-hazard', address: '/sets/R-006', isThereWhen: '#story li' },
  { name: 'accessory', address: '/sets/A-004', isThereWhen: '#story li' },
  { name: 'provenance', address: '/sets/R-009/provenance', isThereWhen: 'td' },
  { name: 'wanted', address: '/wanted', isThereWhen: 'h2' },
  { name: 'books', address: '/books', isThereWhen: 'dt' },
  { name: 'bring-a-list', address: '/bring-a-list', isThereWhen: 'input[type=file]' },
  { name: 'bench-choices', address: '/bench', isThereWhen: 'h3' },
  { name: 'bench', address: '/bench/R-004', isThereWhen: '[role=tab]' },
  { name: 'intake', address: '/intake', isThereWhen: 'form' },
  { name: 'intake-walk', address: '/intake/R-004', isThereWhen: '[role=tab]' },
];
