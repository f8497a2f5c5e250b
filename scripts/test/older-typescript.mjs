// The dependency checker reads types through TypeScript's own parser, which TypeScript 7 no longer
// offers to other programs. Loaded with --import, this hands it the last version that does.
import { registerHooks } from 'node:module'

registerHooks({
  resolve: (specifier, context, next) =>
    next(specifier.replace(/^typescript(?=$|\/)/, 'typescript-5'), context),
})
