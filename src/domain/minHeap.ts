/** A binary heap of whole numbers: the smallest comes out first. */
export class MinHeap {
  readonly #values: number[] = [];

  get smallest(): number | undefined {
    return this.#values[0];
  }

  push(value: number): void {
    const values = this.#values;
    let hole = values.length;
    values.push(value);
    while (hole > 0) {
      const parent = (hole - 1) >> 1;
      const parentValue = values[parent]!;
      if (parentValue <= value) break;
      values[hole] = parentValue;
      hole = parent;
    }
    values[hole] = value;
  }

  pop(): number | undefined {
    const values = this.#values;
    const smallest = values[0];
    const last = values.pop();
    if (last === undefined || values.length === 0) return smallest;
    let hole = 0;
    for (;;) {
      let child = 2 * hole + 1;
      if (child >= values.length) break;
      if (child + 1 < values.length && values[child + 1]! < values[child]!) child += 1;
      if (values[child]! >= last) break;
      values[hole] = values[child]!;
      hole = child;
    }
    values[hole] = last;
    return smallest;
  }
}
