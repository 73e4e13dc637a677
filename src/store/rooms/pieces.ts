const PIECE = 500

/** A long list of ids asked for in pieces: databases take only so many in one statement. */
export async function inPieces<T>(ids: readonly string[], ask: (some: string[]) => Promise<T[]>): Promise<T[]> {
  const all: T[] = []
  for (let i = 0; i < ids.length; i += PIECE) all.push(...(await ask(ids.slice(i, i + PIECE))))
  return all
}
