/** A fresh key, from chance only. `randomUUID` is missing on plain HTTP; `getRandomValues` never is. */
export function freshKey(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16))
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')
}
