#!/usr/bin/env node
// The launcher: checks Node, installs and builds when needed, then starts the server or runs a command.
// Plain JavaScript with nothing but Node in it, because it runs before anything is installed.
import { dirname, join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'

const root = dirname(dirname(fileURLToPath(import.meta.url)))

async function main(args) {
  const { exitCodes, nodeProblem, whatIsMissing } = await import('../scripts/ready.mjs')
  const wrongNode = nodeProblem(process.versions.node)
  if (wrongNode) {
    console.error(wrongNode)
    return exitCodes.wrongNode
  }
  if (whatIsMissing(root).length > 0) {
    const { makeReady } = await import('../scripts/make-ready.mjs')
    const failure = await makeReady(root)
    if (failure) {
      console.error(failure.sentence)
      return failure.exitCode
    }
  }
  return args[0] === 'start' ? startServer(args.slice(1)) : runCommand(args)
}

const built = (name) => import(pathToFileURL(join(root, 'dist', name)).href)

/** The server holds the process until it is told to stop, so there is no exit code to give yet. */
async function startServer(args) {
  const server = await built('server/main.js')
  if (typeof server.start === 'function') return server.start(args)
}

async function runCommand(args) {
  const cli = await built('cli-app/main.js')
  return cli.run(args)
}

main(process.argv.slice(2)).then(
  (code) => {
    if (typeof code === 'number') process.exitCode = code
  },
  (fault) => {
    console.error('Wetside stopped on a fault of its own, not on anything you entered. Please report these lines:')
    console.error(fault instanceof Error ? fault.stack : fault)
    process.exitCode = 70
  },
)
