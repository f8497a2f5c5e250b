/** One-way imports: renderer -> shared-core <- electron -> migrations. See DEVELOPERS.md. */
const coreLibraries = ['zod', 'big.js', 'culori', 'flatqueue']

module.exports = {
  forbidden: [
    {
      name: 'core-imports-nothing-outward',
      severity: 'error',
      comment: 'shared-core is pure: only itself and the allow-listed pure packages.',
      from: { path: '^shared-core/' },
      to: {
        pathNot: [
          '^shared-core/',
          `(^|/)node_modules/(@types/)?(${coreLibraries.join('|').replaceAll('.', '\\.')})/`,
        ],
      },
    },
    {
      name: 'window-stays-in-the-window',
      severity: 'error',
      comment: 'The renderer reaches the other processes through the contract only.',
      from: { path: '^renderer/' },
      to: { path: ['^electron/', '^migrations/', '^scripts/'] },
    },
    {
      name: 'window-has-no-node',
      severity: 'error',
      from: { path: '^renderer/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'window-loads-no-shell-packages',
      severity: 'error',
      from: { path: '^renderer/' },
      to: { path: '(^|/)node_modules/(electron|better-sqlite3|kysely|pdfkit)/' },
    },
    {
      name: 'shell-does-not-draw',
      severity: 'error',
      from: { path: '^electron/' },
      to: { path: ['^renderer/', '(^|/)node_modules/react(-dom)?/'] },
    },
    {
      name: 'database-is-known-to-the-store-alone',
      severity: 'error',
      comment: 'Nothing outside the store and the migrations knows which engine holds the data.',
      from: { path: '^(electron|shared-core|renderer)/', pathNot: '^electron/service/store/' },
      to: { path: '(^|/)node_modules/(@types/)?better-sqlite3/' },
    },
    {
      name: 'service-knows-no-electron',
      severity: 'error',
      comment: 'The service runs on plain Node too; only its two entry files talk to Electron.',
      from: { path: '^electron/service/', pathNot: '^electron/service/(main|port)\\.ts$' },
      to: { path: ['(^|/)node_modules/electron/', '^electron/(main|preload)/'] },
    },
    {
      name: 'first-calls-come-alone',
      severity: 'error',
      comment:
        'What answers the first screen does not load the whole contract; that comes when it is asked for.',
      from: {
        path: '^electron/service/(service|answer|desk|call-book|first-calls|pure-names)\\.ts$',
      },
      to: {
        path: [
          '^shared-core/contract/calls\\.ts$',
          '^electron/service/(all-calls|handlers/(pure-)?handlers)\\.ts$',
        ],
        dependencyTypesNot: ['type-only', 'dynamic-import'],
      },
    },
    {
      name: 'migrations-stand-alone',
      severity: 'error',
      comment: 'A shipped migration must not change when code changes.',
      from: { path: '^migrations/', pathNot: '^migrations/index' },
      to: { path: '^(electron|renderer|shared-core|scripts)/' },
    },
    {
      name: 'no-cycles',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'product-code-never-imports-tests',
      severity: 'error',
      from: { path: '^(shared-core|electron|renderer|migrations)/' },
      to: { path: '^(tests|scripts)/' },
    },
    {
      name: 'every-import-is-found',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
    },
  },
}
