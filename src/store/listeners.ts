/** Who wants to hear of commits, by bench. */
export class Listeners {
  private readonly byBench = new Map<string, Set<{ heard: () => void }>>()

  add(bench: string, heard: () => void): () => void {
    const entry = { heard }
    const entries = this.byBench.get(bench) ?? new Set()
    this.byBench.set(bench, entries.add(entry))
    return () => {
      entries.delete(entry)
      if (entries.size === 0 && this.byBench.get(bench) === entries) this.byBench.delete(bench)
    }
  }

  /** Tells the listeners of a bench, or all. Later, so that a failing listener cannot fail the write. */
  tell(bench: string | null): void {
    const sets = bench === null ? [...this.byBench.values()] : [this.byBench.get(bench) ?? []]
    for (const entries of sets)
      for (const entry of entries)
        setImmediate(() => {
          if ((entries as Set<unknown>).has(entry)) entry.heard()
        })
  }
}
