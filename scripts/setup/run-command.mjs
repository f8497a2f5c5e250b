import { spawn } from 'node:child_process'

const keptLines = 25

/**
 * Runs a program to its end and returns what it printed.
 *
 * Rejects with the last lines of its output when it fails or outlives `timeoutMs`.
 */
export function runCommand(program, args, { cwd, env, timeoutMs, shell = false } = {}) {
  return new Promise((resolve, reject) => {
    let output = ''
    let stdout = ''
    const child = spawn(program, args, {
      cwd,
      env: { ...process.env, ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
      timeout: timeoutMs,
      killSignal: 'SIGKILL',
      shell,
    })
    child.stdout.on('data', (chunk) => {
      stdout += chunk
      output += chunk
    })
    child.stderr.on('data', (chunk) => {
      output += chunk
    })
    child.on('error', reject)
    child.on('close', (code, signal) => {
      if (code === 0) return resolve(stdout)
      const tail = output.trimEnd().split('\n').slice(-keptLines).join('\n')
      reject(new Error(`${program} ended with ${signal ?? code}\n${tail}`))
    })
  })
}
