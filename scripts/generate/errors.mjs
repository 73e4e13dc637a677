// docs/errors.md, from the registry of problems.
import { registry } from '../../dist/kernel/index.js'

export async function errorPage() {
  const rows = Object.entries(registry).map(
    ([code, one]) =>
      `| \`${code}\` | ${one.sentence.replaceAll('|', '\\|')} | ${one.status} | ${one.exit} | ${one.help} |`,
  )
  return `# Every problem by its code

Made from \`src/kernel/problems/registry.ts\` by \`npm run generate\`. A sentence says what is wrong, with the value, and
what would be right; \`{names}\` are filled in. The HTTP status and the exit code of the command line stand beside it.

| Code | Sentence | HTTP | exit | help |
| --- | --- | --- | --- | --- |
${rows.join('\n')}
`
}
