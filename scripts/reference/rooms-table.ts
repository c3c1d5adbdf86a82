import type { Room } from '../house/house.ts'
import { table } from './page.ts'

const marks = ['<!-- rooms: printed from rooms.json -->', '<!-- rooms: end -->'] as const

/** The page with the table of rooms between its marks printed anew. */
export function withRoomsTable(text: string, rooms: Readonly<Record<string, Room>>): string {
  const [start, end] = marks.map((mark) => text.indexOf(mark))
  if (start < 0 || end < start)
    throw new Error(`docs/architecture.md has lost the marks ${marks.join(' and ')}`)
  const before = text.slice(0, start + marks[0].length)
  return `${before}\n\n${roomsTable(rooms)}\n\n${text.slice(end)}`
}

function roomsTable(rooms: Readonly<Record<string, Room>>): string {
  return table(
    ['level', 'room', 'on the door', 'may import', 'packages'],
    Object.entries(rooms).map(([name, room]) => [
      String(room.level),
      `\`${name}\``,
      room.door,
      room.imports.join(', ') || '–',
      room.packages.join(', ') || '–',
    ]),
  )
}
