import type { ListField } from './listField.js';

/**
 * What collectors call their columns, in English and German, as `headerKey` makes it. Our own
 * list, from no program's format.
 */
export const headerAliases: Readonly<Record<ListField, readonly string[]>> = {
  INVENTORY_NUMBER: [
    ...['inventory number', 'inventory no', 'inv no', 'number', 'no', 'item no', 'id'],
    ...['inventarnummer', 'inventarnr', 'inventar nr', 'inv nr', 'nummer', 'nr', 'lfd nr'],
  ],
  NAME: ['name', 'title', 'nickname', 'bezeichnung', 'titel'],
  MAKER: ['maker', 'make', 'made by', 'manufacturer', 'brand', 'hersteller', 'marke', 'firma'],
  MODEL: ['model', 'model no', 'type', 'designation', 'modell', 'typ', 'geratetyp', 'gerat'],
  ROLE: ['role', 'kind of accessory', 'purpose', 'used as', 'rolle', 'zubehorart', 'verwendung'],
  SERIAL_NUMBER: [
    ...['serial number', 'serial no', 'serial', 's n', 'sn', 'ser no'],
    ...['seriennummer', 'serien nr', 'seriennr', 'ser nr', 'fabriknummer', 'werknummer'],
  ],
  MADE: [
    ...['made', 'year made', 'year', 'date made', 'built', 'year of manufacture'],
    ...['baujahr', 'bj', 'hergestellt', 'herstellungsjahr', 'jahr'],
  ],
  PLACE: [
    ...['place', 'location', 'stored in', 'storage', 'room', 'shelf'],
    ...['standort', 'ort', 'lagerort', 'lager', 'raum', 'regal', 'platz'],
  ],
  ACQUIRED_ON: [
    ...['acquired on', 'acquired', 'date bought', 'bought on', 'bought', 'purchase date'],
    ...['date acquired', 'date of purchase', 'date', 'kaufdatum', 'gekauft am', 'erworben am'],
    ...['erworben', 'anschaffung', 'anschaffungsdatum', 'zugang', 'datum'],
  ],
  PRICE: [
    ...['price', 'price paid', 'paid', 'cost', 'purchase price'],
    ...['preis', 'kaufpreis', 'bezahlt', 'kosten', 'anschaffungspreis'],
  ],
  CURRENCY: ['currency', 'cur', 'wahrung'],
  SELLER: [
    ...['seller', 'bought from', 'acquired from', 'from', 'source', 'vendor'],
    ...['verkaufer', 'gekauft von', 'gekauft bei', 'erworben von', 'von', 'vorbesitzer'],
  ],
  VENUE: ['venue', 'fair', 'auction', 'bought at', 'flohmarkt', 'borse', 'auktion', 'kaufort'],
  NOTE: [
    ...['note', 'notes', 'remark', 'remarks', 'comment', 'comments', 'description'],
    ...['bemerkung', 'bemerkungen', 'notiz', 'notizen', 'anmerkung', 'anmerkungen', 'kommentar'],
  ],
};
