/** A line of pasted text in cells, as its own separators cut it. */

const FRACTION = '½¼¾⅓⅔⅛⅜⅝⅞'
const DASHES = /^[-–—−.]*$|^n\/?[ar]$/i
const RULE = /^[\s|+:=_–—-]+$/

const NO_TIME = '–'

/** A line that only draws a border. */
export const isRule = (line: string): boolean => RULE.test(line)

/** A cell in which the sheet gives no time. */
export const isNone = (cell: string): boolean => DASHES.test(cell)

/** A number with its unit of temperature: `18C`, `20,5 °C`, `68 °F`, `20 °C (68 °F)`. */
export const isTemperature = (cell: string): boolean => /^[-−]?\d+(?:[.,]\d+)?\s*°?\s*[CF](?:\s*\(.*\))?$/i.test(cell)

/** The first of the two units that a cell such as `20 °C (68 °F)` gives. */
export const firstUnit = (cell: string): string => cell.replace(/\s*\(.*\)$/, '')

export const isBareNumber = (cell: string): boolean => /^\d+(?:[.,]\d+)?$/.test(cell)

/** A time that cannot be taken for anything else: with a colon, a fraction or its unit. */
export const isClearTime = (cell: string): boolean =>
  /^\d+:\d\d$/.test(cell) ||
  new RegExp(`[${FRACTION}]$`).test(cell) ||
  /^\d+(?:[.,]\d+)?\s*(?:min|m|s|sec|['′])/i.test(cell)

/** Something where a time stands: a number however written, even a misspelt one such as `1o`, or a dash. */
export const looksLikeTime = (cell: string): boolean =>
  isNone(cell) || (/^\d\S{0,7}( \S{1,4})?$/.test(cell) && !cell.includes('+'))

/** Numbers keep their units and fractions when a line is cut at single spaces. */
const glue = (line: string): string =>
  line
    .replace(/(\d)\s+(°\s*[CF]\b|[CF]\b)/g, '$1$2')
    .replace(/(\d+)\s*min\.?\s*(\d+)\s*s(?:ec)?\b/gi, '$1min$2s')
    .replace(/(\d)\s+(min|sec)\b\.?/gi, '$1$2')
    .replace(new RegExp(`(\\d)\\s+([${FRACTION}])`, 'g'), '$1$2')
    .replace(/(\d)\s+(\d\/\d)\b/g, '$1_$2')
    .replace(/(\d)\s*\+\s*(?=\d)/g, '$1+')

const tidy = (cells: string[]): string[] =>
  cells.map((cell) => cell.replaceAll('_', ' ').trim()).filter((cell) => cell !== '')

/** A comma of a file of commas: with no space behind it, and not the decimal comma of a number. */
const COMMA = /(?<=:\d\d),(?=\S)|,(?=\d+:\d\d)|,(?=[^\s\d])|(?<=[^\s\d]),(?=\d)/

/** Cuts at tabs, bars, semicolons, commas or wide gaps if the line has them, else at every space. */
export function cellsOf(line: string): string[] {
  const drawn = line.trim().replace(/^\||\|$/g, '')
  for (const separator of [/\t/, /\|/, /;/, COMMA, /\s{2,}/]) {
    // An empty cell between two others holds the place of a time that the sheet does not give.
    const cells = drawn.split(separator).map((cell) => cell.trim() || NO_TIME)
    if (cells.filter((cell) => cell !== NO_TIME).length > 1) return cells
  }
  return wordsOf(line)
}

/** Brings “20 °C = 9:30”, “20 °C: 9:30” and “9:30 at 20 °C” to “20 °C 9:30”, and signs of one letter to two. */
export const straightened = (line: string): string =>
  line
    .replaceAll('℃', '°C')
    .replaceAll('℉', '°F')
    .replace(/\b(\d+(?::\d\d|[.,]\d+)?(?:\s*min)?)\s+(?:at|@)\s+(\d+(?:[.,]\d+)?\s*°?\s*[CF]\b)/gi, '$2 $1')
    .replace(/(\d\s*°?\s*[CF])\s*[:=]\s*(?=\d)/gi, '$1 ')

export const wordsOf = (line: string): string[] => tidy(glue(line.trim()).split(/[\s]+|,\s+/))
