/**
 * Things kept on this device for longer than a page lives, larger than a line: a run with its events. In IndexedDB;
 * a browser that forbids it (private windows) only forgets, and what is in the page lives on until it is closed.
 */
export interface Notebook {
  /** Undefined when nothing is kept under the key. */
  read<T>(key: string): Promise<T | undefined>
  write(key: string, value: unknown): Promise<void>
}

const PAGES = 'pages'

export const notebook: Notebook = {
  read: async <T>(key: string) => {
    try {
      return await asked<T | undefined>((await pages('readonly')).get(key))
    } catch {
      return undefined
    }
  },
  write: async (key, value) => {
    try {
      await asked((await pages('readwrite')).put(value, key))
    } catch {
      // Nothing to do: see above.
    }
  },
}

let opened: Promise<IDBDatabase> | null = null

async function pages(mode: IDBTransactionMode): Promise<IDBObjectStore> {
  opened ??= open()
  const database = await opened.catch((fault: unknown) => {
    opened = null
    throw fault
  })
  return database.transaction(PAGES, mode).objectStore(PAGES)
}

function open(): Promise<IDBDatabase> {
  const request = window.indexedDB.open('wetside', 1)
  request.onupgradeneeded = () => request.result.createObjectStore(PAGES)
  return asked(request)
}

const asked = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result)
    request.onerror = () => reject(request.error)
  })
