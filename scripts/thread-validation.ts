import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { validationPage } from '../tests/bench/thread-validation-page.ts'
import { repo } from './runtime.ts'

// Writes docs/thread-validation.md from the routes of the published pieces.

const page = join(repo, 'docs', 'thread-validation.md')
writeFileSync(page, validationPage())
process.stdout.write(`written to ${page}\n`)
