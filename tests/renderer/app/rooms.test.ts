import { describe, expect, it } from 'vitest'
import { findRoom, rooms } from '../../../renderer/app/rooms.ts'
import { menuRooms } from '../../../shared-core/contract/shell-commands.ts'

describe('rooms', () => {
  it('are the ten of the menu, in its order', () => {
    expect(rooms.map(({ name }) => name)).toEqual(menuRooms)
  })

  it.each(rooms)('$title opens', ({ name }) => {
    expect(findRoom(name)).toBeDefined()
  })
})
