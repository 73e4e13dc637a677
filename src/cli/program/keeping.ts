import type { Program } from './shape.js'

/** What is kept: backup and restore. */
export function keeping({ add, output, done }: Program): void {
  add('backup <file>', 'Writes everything kept to one file.').action(async (file: string) =>
    done(await (await import('../commands/backup.js')).backup(file, output)),
  )
  add('restore <file>', 'Puts a backup in place of everything kept.')
    .option('--replace', 'yes, replace what is kept now')
    .action(async (file: string, options: object) =>
      done(await (await import('../commands/backup.js')).restore(file, options, output)),
    )
}
