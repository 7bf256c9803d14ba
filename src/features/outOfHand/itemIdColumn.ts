import { Column, ForeignKey } from 'typeorm';

/** The id of an item, for tables whose own index on it has a condition. */
export const ItemIdColumn = (): PropertyDecorator => (target, property) => {
  Column({ type: 'varchar', length: 36 })(target, property);
  ForeignKey('item')(target, property);
};
