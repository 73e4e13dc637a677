import { bathLifeWords, fixerWords } from './baths.js'
import { benchOrderWords } from './bench-order.js'
import { controlWords } from './control.js'
import { diluteWords } from './dilute.js'
import { doseWords } from './dose.js'
import { dryingWords } from './drying.js'
import { filmsWords } from './films.js'
import { formulaWords } from './formulas.js'
import { housePagesWords } from './house-pages.js'
import { kitWords } from './kit.js'
import { listsWords } from './lists.js'
import { mixSheetWords } from './mix-sheet.js'
import { chartWords, contrastWords, indexWords, stripWords, zonesWords } from './negatives.js'
import { orderLinkWords } from './order-link.js'
import { paperWords } from './paper.js'
import { pasteWords } from './paste.js'
import { planWords } from './plan.js'
import { cardWords, graphWords } from './print.js'
import { rollLinesWords } from './roll-lines.js'
import { rollPaperWords } from './roll-paper.js'
import { rollsWords } from './rolls.js'
import { rollsPagesWords } from './rolls-pages.js'
import { benchSheetWords, runRecordWords } from './run-paper.js'
import { runRollsWords } from './run-rolls.js'
import { scoreWorkingWords } from './score-working.js'
import { shelfBottlesWords } from './shelf-bottles.js'
import { shelfLotsWords } from './shelf-lots.js'
import { shelfMixWords } from './shelf-mix.js'
import { shelfPagesWords } from './shelf-pages.js'
import { shelfPaperWords } from './shelf-paper.js'
import { shelfProductsWords } from './shelf-products.js'
import { shelfTerminalWords } from './shelf-terminal.js'
import { shelfWasteWords } from './shelf-waste.js'
import { temperWords } from './temper.js'
import { thermometerWords } from './thermometers.js'
import { timesWords } from './times.js'
import { timesPagesWords } from './times-pages.js'
import { todayWords } from './today.js'
import { washWords, wasteWords } from './waste.js'

/** Everything else: pages for a desk, paper and terminal. New words belong here unless a running tank says them. */
export const deskWords = {
  ...timesWords,
  ...thermometerWords,
  ...todayWords,
  ...pasteWords,
  ...paperWords,
  ...doseWords,
  ...scoreWorkingWords,
  ...temperWords,
  ...diluteWords,
  ...formulaWords,
  ...mixSheetWords,
  ...controlWords,
  ...stripWords,
  ...indexWords,
  ...contrastWords,
  ...zonesWords,
  ...chartWords,
  ...timesPagesWords,
  ...shelfPagesWords,
  ...shelfPaperWords,
  ...shelfTerminalWords,
  ...shelfBottlesWords,
  ...shelfLotsWords,
  ...shelfMixWords,
  ...shelfProductsWords,
  ...shelfWasteWords,
  ...housePagesWords,
  ...graphWords,
  ...cardWords,
  ...listsWords,
  ...planWords,
  ...benchSheetWords,
  ...runRecordWords,
  ...fixerWords,
  ...bathLifeWords,
  ...benchOrderWords,
  ...washWords,
  ...wasteWords,
  ...rollsWords,
  ...rollsPagesWords,
  ...runRollsWords,
  ...filmsWords,
  ...dryingWords,
  ...kitWords,
  ...rollPaperWords,
  ...rollLinesWords,
  ...orderLinkWords,
} as const
