import { controlWords } from './control.js'
import { doseWords } from './dose.js'
import { housePagesWords } from './house-pages.js'
import { pasteWords } from './paste.js'
import { cardWords, graphWords } from './print.js'
import { benchSheetWords, runRecordWords } from './run-paper.js'
import { shelfPagesWords } from './shelf-pages.js'
import { thermometerWords } from './thermometers.js'
import { timesWords } from './times.js'
import { timesPagesWords } from './times-pages.js'
import { todayWords } from './today.js'

/** Everything else: pages for a desk, paper and terminal. New words belong here unless a running tank says them. */
export const deskWords = {
  ...timesWords,
  ...thermometerWords,
  ...todayWords,
  ...pasteWords,
  ...doseWords,
  ...controlWords,
  ...timesPagesWords,
  ...shelfPagesWords,
  ...housePagesWords,
  ...graphWords,
  ...cardWords,
  ...benchSheetWords,
  ...runRecordWords,
} as const
