export const keeping = {
  backup: `  $ wetside backup bench.backup.ndjson
  Everything kept is in bench.backup.ndjson.`,
  restore: `  $ wetside restore bench.backup.ndjson
  Everything kept now would be replaced by what is in bench.backup.ndjson. Say so with --replace; make a backup first.`,
} as const
