/** Lets a few through at once; the others wait their turn. */
export class TurnTaker {
  private readonly waiting: (() => void)[] = [];
  private running = 0;

  constructor(private readonly atOnce: number) {}

  async take<Result>(work: () => Promise<Result>): Promise<Result> {
    if (this.running >= this.atOnce) {
      await new Promise<void>((resolve) => this.waiting.push(resolve));
    } else this.running++;
    try {
      return await work();
    } finally {
      const next = this.waiting.shift();
      if (next) next();
      else this.running--;
    }
  }
}
