// Which folder may import which. Everything not listed is forbidden, so a new folder needs a line here.
const mayImport = {
  kernel: [],
  science: ['kernel'],
  score: ['kernel', 'science'],
  planning: ['kernel', 'science', 'score'],
  words: ['kernel'],
  wire: ['kernel'],
  lab: ['kernel', 'science', 'score', 'planning', 'words', 'wire'],
  store: ['kernel', 'wire', 'lab'],
  solver: ['kernel', 'planning'],
  print: ['kernel', 'wire', 'score', 'words', 'science'],
  web: ['kernel', 'science', 'score', 'planning', 'words'],
  server: ['kernel', 'science', 'score', 'planning', 'words', 'wire', 'lab', 'store', 'solver', 'print'],
  cli: ['kernel', 'science', 'score', 'planning', 'words', 'wire', 'lab', 'store', 'solver', 'print'],
}
/** Imports allowed only as `import type`. */
const mayImportTypesOf = { wire: ['science', 'score'], web: ['wire'] }

const tests = '\\.test\\.tsx?$|^src/store/suite/|^src/[^/]+/testing/'
const anyOf = (names) => `^src/(${names.join('|')})/`
const others = (allowed, own) => Object.keys(mayImport).filter((name) => name !== own && !allowed.includes(name))

const directions = Object.entries(mayImport).map(([own, allowed]) => ({
  name: `direction-of-${own}`,
  comment: `${own} may import ${allowed.length ? allowed.join(', ') : 'nothing'}`,
  severity: 'error',
  from: { path: `^src/${own}/`, pathNot: tests },
  to: { path: anyOf(others([...allowed, ...(mayImportTypesOf[own] ?? [])], own)) },
}))

const typesOnly = Object.entries(mayImportTypesOf).map(([own, allowed]) => ({
  name: `types-only-of-${own}`,
  comment: `${own} may import ${allowed.join(', ')} only as types`,
  severity: 'error',
  from: { path: `^src/${own}/`, pathNot: tests },
  to: { path: anyOf(allowed), dependencyTypesNot: ['type-only'] },
}))

/** Pure folders lean on nothing from outside; wire has its schema library. */
const outside = (own, allowed) => ({
  name: `nothing-from-outside-in-${own}`,
  comment: `${own} imports no Node module and no package${allowed.length ? ` but ${allowed.join(', ')}` : ''}`,
  severity: 'error',
  from: { path: `^src/${own}/`, pathNot: tests },
  to: {
    dependencyTypes: ['core', 'npm', 'npm-dev', 'npm-optional', 'npm-peer', 'npm-no-pkg', 'npm-unknown'],
    ...(allowed.length ? { pathNot: `node_modules/(${allowed.join('|')})/` } : {}),
  },
})

module.exports = {
  forbidden: [
    ...directions,
    ...typesOnly,
    outside('kernel', []),
    outside('science', []),
    outside('score', []),
    outside('planning', []),
    outside('words', []),
    outside('lab', []),
    outside('wire', ['zod']),
    {
      name: 'through-the-door',
      comment: 'Other folders are entered by their index.ts only',
      severity: 'error',
      from: { path: '^src/([^/]+)/', pathNot: '^src/store/suite/' },
      to: { path: '^src/[^/]+/', pathNot: '^src/$1/|^src/[^/]+/index\\.tsx?$' },
    },
    {
      name: 'section-to-section',
      comment: 'Sections of the web app meet in app/ and share through shared/',
      severity: 'error',
      from: { path: '^src/web/sections/([^/]+)/' },
      to: { path: '^src/web/sections/', pathNot: '^src/web/sections/$1/' },
    },
    {
      name: 'web-upwards',
      comment: 'app uses sections, sections use shared, never the other way',
      severity: 'error',
      from: { path: '^src/web/shared/' },
      to: { path: '^src/web/(app|sections)/' },
    },
    {
      name: 'sections-to-app',
      comment: 'app uses sections, never the other way',
      severity: 'error',
      from: { path: '^src/web/sections/' },
      to: { path: '^src/web/app/' },
    },
    {
      name: 'no-cycles',
      comment: 'A circle of imports hides who leans on whom',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'resolvable',
      comment: 'An import that leads nowhere',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '\\.(css|woff2?)$|\\?' },
    },
    {
      name: 'no-tests-in-code',
      comment: 'Code does not lean on its tests or on development tools',
      severity: 'error',
      from: { path: '^src/', pathNot: tests },
      to: { path: '\\.test\\.tsx?$|^test/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.json'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
    },
  },
}
