/** What the files call things, and the global ids that those have been given. */
export class DemoNames {
  private readonly idsByName = new Map<string, string>();

  keep(kind: string, name: string, id: string): void {
    const key = `${kind} ${name}`;
    if (this.idsByName.has(key)) throw new Error(`There are two of “${name}” (${kind}).`);
    this.idsByName.set(key, id);
  }

  /** @throws Error with a sentence when nothing was called so by this point of the story. */
  id(kind: string, name: string): string {
    const id = this.idsByName.get(`${kind} ${name}`);
    if (id === undefined) {
      throw new Error(`At this point of the story there is no ${kind} called “${name}”.`);
    }
    return id;
  }

  optionalId(kind: string, name: string | undefined): string | null {
    return name === undefined ? null : this.id(kind, name);
  }
}
