/** A way of writing instants by the clocks of a zone; an unknown one is UTC. */
export function inZone(zone: string, locale: string, style: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  return new Intl.DateTimeFormat(locale, { ...style, timeZone: isZone(zone) ? zone : 'UTC' })
}

/** Whether a time zone goes by this name here; days could not be written in any other. */
export function isZone(name: string): boolean {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: name }).resolvedOptions().timeZone !== ''
  } catch {
    return false
  }
}
