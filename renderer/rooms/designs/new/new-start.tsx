import { useMemo } from 'react'
import { hrefTo } from '../../../app/place.ts'
import { Room } from '../../../app/room.tsx'
import { BeadThumbnail } from '../../../drawing/bead-thumbnail.tsx'
import { NEW } from '../places.ts'
import { wayScenes } from './way-scenes.ts'
import { ways } from './ways.ts'

const ART = { width: 280, height: 150 }

/** The ways to begin a design, each drawn in beads. */
export function NewStart() {
  const scenes = useMemo(() => wayScenes(), [])
  return (
    <Room title="New design" back={{ href: '#/designs', label: 'Designs' }}>
      <ul className="new-ways">
        {ways.map(({ name, title, says }) => (
          <li key={name} className="new-way">
            <BeadThumbnail scene={scenes[name]} label={`${title}, drawn`} {...ART} />
            <h2 className="new-way-title">
              <a href={hrefTo({ room: 'designs', id: NEW, sub: name })}>{title}</a>
            </h2>
            <p className="designs-quiet">{says}</p>
          </li>
        ))}
      </ul>
    </Room>
  )
}
