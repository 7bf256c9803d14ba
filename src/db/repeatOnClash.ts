const clashes = new Set(['40001', '40P01']);

/** PostgreSQL asks for a transaction to be run again after a deadlock or a serialisation clash. */
export async function repeatOnClash<Result>(
  transaction: () => Promise<Result>,
  attempts = 5,
): Promise<Result> {
  for (let attempt = 1; ; attempt++) {
    try {
      return await transaction();
    } catch (error) {
      const code = (error as { code?: unknown }).code;
      if (attempt >= attempts || typeof code !== 'string' || !clashes.has(code)) throw error;
    }
  }
}
