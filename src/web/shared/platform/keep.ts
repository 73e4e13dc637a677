/** Small texts kept on this device. A browser that forbids it (private windows, full disk) only forgets. */
function keeper(store: () => Storage) {
  return {
    read(key: string): string | null {
      try {
        return store().getItem(key)
      } catch {
        return null
      }
    },
    write(key: string, text: string | null): void {
      try {
        if (text === null) store().removeItem(key)
        else store().setItem(key, text)
      } catch {
        // Nothing to do: the text lives on in the page until it is closed.
      }
    },
  }
}

/** Until the tab is closed: what is being typed. */
export const keptForTab = keeper(() => window.sessionStorage)
/** Until it is cleared: choices about this device. */
export const keptOnDevice = keeper(() => window.localStorage)
