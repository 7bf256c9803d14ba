/** How many units left a lot, as SQL over `stock_lot`. Text is the same on both engines. */
const drawnOfLot = `CAST(COALESCE((SELECT SUM(drawn.quantity) FROM stock_draw drawn
  WHERE drawn.lot_id = stock_lot.id), 0) AS INTEGER)`;

/** How many units of a reservation are still put aside, as SQL over a reservation `held`. */
const openOf = (held: string): string => `CASE WHEN ${held}.released_at IS NOT NULL THEN 0
  ELSE ${held}.quantity - COALESCE((SELECT SUM(used.quantity) FROM stock_draw used
    WHERE used.reservation_id = ${held}.id), 0) END`;

const reservedOfLot = `CAST(COALESCE((SELECT SUM(${openOf('held')}) FROM stock_reservation held
  WHERE held.lot_id = stock_lot.id), 0) AS INTEGER)`;

/** The counts of a lot, each as one SQL expression; the one place that says what is left. */
export const stockLevels = {
  drawn: drawnOfLot,
  reserved: reservedOfLot,
  onHand: `(stock_lot.quantity - ${drawnOfLot})`,
  available: `(stock_lot.quantity - ${drawnOfLot} - ${reservedOfLot})`,
  openOfReservation: `CAST(${openOf('stock_reservation')} AS INTEGER)`,
};
