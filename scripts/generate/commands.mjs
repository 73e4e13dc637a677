// docs/cli.md, from the help that the commands themselves print.
import { helpPages } from '../../dist/cli/main.js'

export async function commandPage() {
  const pages = await helpPages()
  const sections = pages.map(({ name, help }) => `## ${name}\n\n\`\`\`\n${help.trim()}\n\`\`\`\n`)
  return `# Commands

Made from the commands' own help by \`npm run generate\`. Each worked example is run by the tests.

${sections.join('\n')}`
}
