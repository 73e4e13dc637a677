import type { z } from 'zod'
import { failed, ok, type Result } from '../kernel/index.js'
import { usage } from './output.js'

/** A text as JSON of a published shape; the first thing wrong is named with its place. */
export function jsonIn<Shape extends z.ZodType>(text: string, name: string, shape: Shape): Result<z.output<Shape>> {
  const read = shape.safeParse(parsed(text))
  if (read.success) return ok(read.data)
  const [issue] = read.error.issues
  return failed(usage(`${name}: ${issue?.path.join('.') || 'the whole'}: ${issue?.message}.`))
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
