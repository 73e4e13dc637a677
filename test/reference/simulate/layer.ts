/** A wash as a person does it: water is moved all the time. Volumes in mL, times in s, flow in mL a minute. */
export interface Pour {
  readonly volume: number
  readonly time: number
  /** Water running through, 0 for a change that is filled and kept. */
  readonly perMinute: number
}

/** What is washed: gelatin of so many mL in all, liquid on film and walls, everything full of fixer (g/L). */
export interface Washed {
  readonly gelatin: number
  readonly surface: number
  readonly walls: number
  readonly fixer: number
  /** s after which half has left the gelatin, once what was near its surface is gone. */
  readonly halfLife: number
}

const CELLS = 16

/**
 * mg of thiosulfate that are left in the gelatin and on the film, by small steps of Fick's law in a layer on a base
 * that nothing passes: each cell gives to its neighbours, the outermost to a bath that is mixed at every moment. The
 * half-life sets the diffusivity by the slowest of the layer's modes, (π/2)² D/L² = ln 2/T½. Nothing of the program is
 * used.
 */
export function layerWashed({ gelatin, surface, walls, fixer, halfLife }: Washed, pours: readonly Pour[]): number {
  const carried = surface + walls
  let cells = new Float64Array(CELLS).fill(fixer)
  let next = new Float64Array(CELLS)
  let bath = fixer
  let before: Pour | undefined
  // Parts of a difference that pass from cell to cell in a second; the outer face is half a cell away.
  const rate = (CELLS * CELLS * 4 * Math.LN2) / (Math.PI * Math.PI * halfLife)
  for (const pour of pours) {
    const goesOn = pour.perMinute > 0 && (before?.perMinute ?? 0) > 0 && before?.volume === pour.volume
    if (!goesOn) bath *= carried / (pour.volume + carried)
    const held = pour.volume + carried
    const steps = Math.max(1, Math.ceil(pour.time * Math.max(4 * rate, pour.perMinute / held)))
    const dt = pour.time / steps
    for (let step = 0; step < steps; step++) {
      for (let i = 0; i < CELLS; i++) {
        const here = cells[i] as number
        const inner = i === 0 ? 0 : (cells[i - 1] as number) - here
        const outer = i === CELLS - 1 ? 2 * (bath - here) : (cells[i + 1] as number) - here
        next[i] = here + rate * dt * (inner + outer)
      }
      const given = (gelatin / CELLS) * 2 * rate * dt * ((cells[CELLS - 1] as number) - bath)
      bath += given / held - (bath * pour.perMinute * dt) / 60 / held
      ;[cells, next] = [next, cells]
    }
    before = pour
  }
  return (gelatin / CELLS) * cells.reduce((sum, one) => sum + one, 0) + surface * bath
}
