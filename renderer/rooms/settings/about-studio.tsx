import { useQuery } from '@tanstack/react-query'
import { bridge } from '../../app/bridge.ts'
import { RefusalError } from '../../app/refusal-error.ts'

/** Which studio this is, where it keeps its data, and the cautions of the trade. */
export function AboutStudio() {
  const { data } = useQuery({ queryKey: ['studio.describe'], queryFn: describe })
  return (
    <div className="settings-about">
      {data !== undefined && (
        <dl className="settings-facts">
          <dt>Tallystrand</dt>
          <dd>{data.version}</dd>
          <dt>Electron</dt>
          <dd>{data.electron}</dd>
          <dt>Your data</dt>
          <dd className="settings-path">{data.dataFile}</dd>
        </dl>
      )}
      <p>Everything stays on this machine. The studio makes no connection to anywhere.</p>
      <h2>Cautions</h2>
      <ul>
        <li>
          Metal findings: keep what the supplier declares. “Nickel free” is a supplier’s claim;
          local rules decide.
        </li>
        <li>
          Old or unknown beads may hold lead or cadmium. Ask for a statement before you sell them.
        </li>
        <li>Small parts: nothing here is for children under three.</li>
        <li>
          At the bench: good light, breaks for eyes and hands, care with needles, blades, thread
          burners and glues.
        </li>
        <li>
          Tax and books: the figures are working figures. A licensed adviser and local law decide.
        </li>
      </ul>
    </div>
  )
}

async function describe() {
  const answer = await bridge.shell('studio.describe', {})
  if (!answer.ok) throw new RefusalError(answer.error)
  return answer.value
}
