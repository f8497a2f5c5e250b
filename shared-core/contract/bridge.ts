import type { Answer, CallInput, CallName, CallOutput } from './calls.ts'
import type { ShellCallInput, ShellCallName, ShellCallOutput } from './shell-calls.ts'
import type { ShellCommand } from './shell-commands.ts'

/** Whether the process that keeps the data is there to answer. */
export type ServiceState = 'running' | 'stopped'

/**
 * All that the page can reach outside itself, as `window.tallystrand`.
 *
 * `request` and `shell` refuse a name that is not in their table and never reject: whatever goes
 * wrong comes back as a refusal. The `on...` functions give back a function that ends listening.
 */
export type Bridge = Readonly<{
  /** Asks the service. */
  request: <N extends CallName>(name: N, input: CallInput<N>) => Promise<Answer<CallOutput<N>>>
  /** Asks the shell: file dialogs, theme, version. */
  shell: <N extends ShellCallName>(
    name: N,
    input: ShellCallInput<N>,
  ) => Promise<Answer<ShellCallOutput<N>>>
  /** Hears what the menu asks for. */
  onCommand: (listener: (command: ShellCommand) => void) => () => void
  /** Hears when the service stops, and when it answers again; refresh everything then. */
  onService: (listener: (state: ServiceState) => void) => () => void
  /** To be called once, when the first screen shows its data and takes input. */
  sayInteractive: () => void
}>
