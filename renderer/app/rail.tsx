import { Icon } from '../ui/icon.tsx'
import { Swatch, type SwatchLook } from '../ui/swatch.tsx'
import { hrefTo, usePlace } from './place.ts'
import { rooms } from './rooms.ts'
import './rail.css'

const LIT: SwatchLook = { hex: '#eda92f', finish: 'gloss' }
const UNLIT: SwatchLook = { hex: '#5d7a82', finish: 'matte' }

/** The ten rooms as ten beads on one thread; the bead of the room one is in is lit. */
export function Rail({
  workshopName,
  onFind,
  onKeys,
}: Readonly<{ workshopName: string; onFind: () => void; onKeys: () => void }>) {
  const { room } = usePlace()
  return (
    <nav className="rail" aria-label="Rooms">
      <p className="rail-name">
        <span className="rail-studio">Tallystrand</span>
        <span className="rail-workshop">{workshopName}</span>
      </p>
      <button type="button" className="rail-find" onClick={onFind}>
        <Icon name="find" size={18} />
        <span>Find anything</span>
        <kbd>Ctrl K</kbd>
      </button>
      <ol className="rail-strand">
        {rooms.map(({ name, title }) => (
          <li key={name}>
            <a
              className="rail-room"
              href={hrefTo({ room: name })}
              aria-current={name === room ? 'page' : undefined}
            >
              <Swatch look={name === room ? LIT : UNLIT} size={name === room ? 24 : 17} />
              <span className="rail-title">{title}</span>
            </a>
          </li>
        ))}
      </ol>
      <button type="button" className="rail-keys" onClick={onKeys}>
        <Icon name="keys" size={18} />
        <span>Keys</span>
        <kbd>?</kbd>
      </button>
    </nav>
  )
}
