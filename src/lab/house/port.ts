import type { Instant, UnitSystem } from '../../kernel/index.js'

export interface Bench {
  readonly id: string
  readonly kind: 'own' | 'demo'
  readonly name: string
  readonly units: UnitSystem
  readonly paper: 'A4' | 'Letter'
  readonly zone: string
  readonly createdAt: Instant
}

export interface HousePort {
  bench(id: string): Promise<Bench | null>
  /** Own benches first, oldest first. */
  benches(): Promise<Bench[]>
  addBench(bench: Bench): Promise<void>
  changeBench(bench: Bench): Promise<void>
  /** Removes a bench and every row of it. Only a demo bench may go this way. */
  removeBench(id: string): Promise<void>
}
