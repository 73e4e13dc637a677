import pg from 'pg'

type Heard = (bench: string | null) => void

const FIRST_WAIT_MS = 100
const LONGEST_WAIT_MS = 5000

/**
 * A connection of its own that hears what other processes committed. When it breaks it connects again and
 * reports null, because changes may have been missed meanwhile.
 */
export class Listening {
  static readonly CHANNEL = 'wetside_bench'
  private client: pg.Client | undefined
  private heard: Heard = () => {}
  private stopped = false
  private waiting: NodeJS.Timeout | undefined

  private constructor(
    private readonly url: string,
    private readonly token: string,
  ) {}

  static async start(url: string, token: string): Promise<Listening> {
    const listening = new Listening(url, token)
    await listening.connect()
    return listening
  }

  onHeard(heard: Heard): void {
    this.heard = heard
  }

  async stop(): Promise<void> {
    this.stopped = true
    clearTimeout(this.waiting)
    await this.client?.end()
  }

  private async connect(): Promise<void> {
    const client = new pg.Client({
      connectionString: this.url,
      connectionTimeoutMillis: LONGEST_WAIT_MS,
      keepAlive: true,
    })
    client.on('notification', ({ payload = '' }) => this.take(payload))
    let broken = false
    const breaks = () => {
      if (broken || this.client !== client) return
      broken = true
      this.client = undefined
      this.reconnectAfter(FIRST_WAIT_MS)
    }
    client.on('error', breaks).on('end', breaks)
    await client.connect()
    await client.query(`listen ${Listening.CHANNEL}`)
    this.client = client
    if (this.stopped) await client.end()
  }

  /** A payload is the token of the process that wrote, and the bench; our own commits were told already. */
  private take(payload: string): void {
    const [token, bench = ''] = payload.split(' ')
    if (token !== this.token) this.heard(bench)
  }

  private reconnectAfter(wait_ms: number): void {
    if (this.stopped) return
    this.waiting = setTimeout(() => {
      this.connect().then(
        () => this.heard(null),
        () => this.reconnectAfter(Math.min(wait_ms * 2, LONGEST_WAIT_MS)),
      )
    }, wait_ms)
    this.waiting.unref()
  }
}
