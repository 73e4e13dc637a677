/** A worked example taken apart: what is typed, what is given as standard input, and what is printed then. */
export interface ExampleParts {
  readonly program: string
  readonly argv: readonly string[]
  readonly input: string
  readonly printed: readonly string[]
}

/** Reads an example as `index.ts` describes it; words are parted as a shell does, as far as the examples go. */
export function exampleParts(example: string): ExampleParts {
  const lines = example.split('\n').map((line) => line.replace(/^ {2}/, ''))
  const input = lines[0]?.startsWith('< ') ? lines[0].slice(2).replaceAll('\\n', '\n') : ''
  const [asked = '', ...printed] = input === '' ? lines : lines.slice(1)
  const [program = '', ...argv] = wordsOf(asked.replace(/^\$ /, ''))
  return { program, argv, input, printed }
}

/** Words and "words in quotes". */
const wordsOf = (line: string): string[] => [...line.matchAll(/"([^"]*)"|(\S+)/g)].map((match) => match[1] ?? match[0])
