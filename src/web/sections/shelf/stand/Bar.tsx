interface BarProps {
  /** What is left by the limit met first, 0 to 1. */
  readonly part: number
  /** Where the next limit stands; null without one. */
  readonly mark?: number | null
  readonly waste?: boolean
}

/** What is left as a bar with the next limit as a thin mark. Words beside it say the same, so it is no picture to read. */
export function Bar({ part, mark = null, waste = false }: BarProps) {
  const held = Math.max(0, Math.min(1, part))
  return (
    <span className={waste ? 'bar waste' : 'bar'} aria-hidden="true">
      <span style={{ width: `${held * 100}%` }} />
      {mark !== null && <i style={{ left: `${Math.max(0, Math.min(1, mark)) * 100}%` }} />}
    </span>
  )
}
