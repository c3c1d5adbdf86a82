import { type Fault, type House, memberOf, roomOf, testingIn } from './house.ts'

/** Lines of one file, tests too. */
export const LONGEST_FILE = 500
/** Lines of a room's door, and names on it; a room may state more names, with a reason. */
export const LONGEST_DOOR = 40
export const MOST_NAMES = 30
/** Lines of a room without its members and tests, and of one member. */
export const LARGEST_ROOM = 2500
export const LARGEST_MEMBER = 600

export function checkFileSizes(house: House): Fault[] {
  return [...house.sources.values()]
    .filter((source) => source.lines > LONGEST_FILE)
    .map((source) => ({
      at: source.path,
      what: `${source.lines} lines; ${LONGEST_FILE} is the ceiling`,
      try: 'split it by idea',
    }))
}

/** A door says what a room gives, name by name, and does nothing. */
export function checkDoors(house: House): Fault[] {
  const faults: Fault[] = []
  for (const [name, room] of Object.entries(house.rooms)) {
    const door = house.sources.get(`src/${name}/index.ts`)
    if (!door) continue
    const most = room.names ?? MOST_NAMES
    // Formatting gives a name a line of its own: names granted are lines granted.
    const longest = LONGEST_DOOR + Math.max(0, most - MOST_NAMES)
    if (door.lines > longest)
      faults.push({
        at: door.path,
        what: `${door.lines} lines; a door has ${longest} at most`,
        try: 'give fewer names',
      })
    if (door.names.length > most)
      faults.push({
        at: door.path,
        what: `${door.names.length} names; ${most} is the most`,
        try: 'give fewer, or state "names" and "namesWhy" in rooms.json',
      })
    for (const line of door.otherStatements)
      faults.push({
        at: `${door.path}:${line}`,
        what: 'a door only exports, by name and from a file',
        try: 'move this into a file of the room',
      })
  }
  return faults
}

export function checkRoomSizes(house: House): Fault[] {
  const testing = testingIn(house)
  const lines = new Map<string, number>()
  for (const source of house.sources.values()) {
    const room = roomOf(source.path)
    if (room === undefined || testing.has(source.path)) continue
    const place = memberOf(house, source.path) ?? `src/${room}`
    lines.set(place, (lines.get(place) ?? 0) + source.lines)
  }
  return [...lines].flatMap(([place, count]) => {
    const [, room, ...member] = place.split('/')
    const isRoom = member.length === 0
    const larger = house.rooms[room]?.members?.larger?.[member.at(-1) ?? '']
    const allowed = house.rooms[room]?.lines
    const largest = allowed?.why ? allowed.most : LARGEST_ROOM
    const most = isRoom ? largest : larger?.why ? larger.lines : LARGEST_MEMBER
    if (count <= most) return []
    const what = `${count} lines without tests${isRoom ? ' and members' : ''}; ${most} is the most`
    return [{ at: place, what, try: 'split the idea in two' }]
  })
}
