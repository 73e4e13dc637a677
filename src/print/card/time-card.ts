import type { Instant, UnitSystem } from '../../kernel/index.js'
import type { DevelopingTime, TimeBasis } from '../../science/index.js'
import { timeGraph } from '../../score/index.js'
import { graphLabels } from '../../words/index.js'
import { type Fonts, measuringFonts } from '../setting/fonts.js'
import { PAPERS, type Page, type PaperName } from '../setting/page.js'
import { paintPages } from '../setting/paint-page.js'
import { layOut } from './layout.js'
import { cardTexts } from './texts.js'

/** What a time card is printed from. */
export interface TimeCardInput {
  readonly film: string
  readonly exposureIndex: number | null
  readonly developer: string
  /** As it is written: `1 + 4`; null for undiluted. */
  readonly dilution: string | null
  readonly agitation: string
  readonly basis: TimeBasis
  /** The time asked for; without one the card leads with the sheet's own reference time. */
  readonly asked: DevelopingTime | null
  readonly units: UnitSystem
  readonly paper: PaperName
  /** Where the times were read, in the words of the person who typed them. */
  readonly sourceWords: string
  /** The days the record was saved and the card is printed, as the bench writes a day. */
  readonly savedAt: string
  readonly today: string
  /** Stands in the file as its date: the same card for the same instant is the same file. */
  readonly printedAt: Instant
}

/** The card of one film in one developer, to be pinned over the sink: one page, tagged PDF. */
export const timeCard = (input: TimeCardInput): Promise<Uint8Array> =>
  paintPages([timeCardPage(input, measuringFonts())], input.printedAt)

/** The card laid out, not yet painted. */
export function timeCardPage(input: TimeCardInput, fonts: Fonts): Page {
  const { basis, asked, units, film } = input
  const labels = graphLabels({ film, basis, asked }, units)
  return layOut({
    texts: cardTexts(input),
    paper: PAPERS[input.paper],
    fonts,
    graph: (size) => timeGraph({ basis, asked, units, size, labels, minTextSize: 12 }),
  })
}
