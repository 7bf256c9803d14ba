import { DefaultNamingStrategy, type NamingStrategyInterface } from 'typeorm';

const toSnake = (name: string): string => name.replace(/([a-z0-9])([A-Z])/g, '$1_$2').toLowerCase();

/** Columns are `snake_case` in SQL, so that hand-written statements need no quoting on either engine. */
export class SnakeNaming extends DefaultNamingStrategy implements NamingStrategyInterface {
  override columnName(
    propertyName: string,
    customName: string | undefined,
    embeddedPrefixes: string[],
  ): string {
    return toSnake([...embeddedPrefixes, customName ?? propertyName].join('_'));
  }
}
