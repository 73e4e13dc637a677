import type { z } from 'zod'
import { failed, ok, type Result } from '../kernel/index.js'
import type { published } from '../wire/index.js'
import { listText } from './lists.js'
import { usage } from './output.js'

type Published = typeof published

/**
 * A text as JSON of a published shape; the first thing wrong is named with its place. The shapes are loaded when there
 * is JSON to read: that takes longer than most answers.
 */
export async function jsonIn<Shape extends keyof Published>(
  text: string,
  name: string,
  shape: Shape,
): Promise<Result<z.output<Published[Shape]>>> {
  const wire = await import('../wire/index.js')
  return jsonAs(text, name, wire.published[shape]) as Result<z.output<Published[Shape]>>
}

/** The question that a file, or standard input as `-`, holds as JSON and as nothing else. */
export async function questionIn<Shape extends keyof Published>(
  file: string,
  shape: Shape,
): Promise<Result<z.output<Published[Shape]>>> {
  const text = await listText(file)
  return text.ok ? jsonIn(text.value, 'the question', shape) : text
}

/** A text as JSON of any shape that is at hand. */
export function jsonAs<Shape extends z.ZodType>(text: string, name: string, shape: Shape): Result<z.output<Shape>> {
  const json = parsed(text)
  if (json === undefined) return failed(usage(`${name} is not JSON: ${JSON.stringify(text.trim().slice(0, 40))}.`))
  const read = shape.safeParse(json)
  if (read.success) return ok(read.data)
  const [issue] = read.error.issues
  return failed(
    usage(
      `${name}: ${issue?.path.join('.') || 'the whole'}: ${issue?.message.replace('received undefined', 'nothing was given')}.`,
    ),
  )
}

/** Whether a text is meant as JSON; lists of people never begin with a brace or a bracket. */
export const isJson = (text: string): boolean => /^\s*[[{]/.test(text)

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
