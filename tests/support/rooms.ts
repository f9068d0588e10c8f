/**
 * Which room of the project may import what: the one table. A file belongs to the first row that
 * describes it.
 */
export interface Room {
  readonly name: string
  /** Files of the room, as paths from the top of the project. */
  readonly files: RegExp
  /** Paths outside the room's own folder that it may import; the doors of other rooms, mostly. */
  readonly doors: readonly RegExp[]
  /** Packages it may import, with whatever lies below them. */
  readonly packages: readonly string[]
  /** Whether it may import Node's own modules. */
  readonly node: boolean
  /** Whether the same input must give the same output, always and everywhere. */
  readonly exact: boolean
  /** Said to whoever breaks the rule. */
  readonly reason: string
}

const geometryDoor = /^geometry\/index\.ts$/
const exportersDoor = /^exporters\/index\.ts$/
const commandLine = /^exporters\/(cli\.ts$|cli\/|cli-[^/]*\.ts$)/

export const rooms: readonly Room[] = [
  {
    name: 'geometry',
    files: /^geometry\//,
    doors: [],
    packages: ['zod', 'flatbush'],
    node: false,
    exact: true,
    reason: 'geometry is the lowest room: pure, and the same in page and command line',
  },
  {
    name: 'build configuration',
    files: /^(app|exporters)\/vite\.[a-z]+\.ts$/,
    doors: [],
    packages: ['vite', '@vitejs/plugin-react'],
    node: true,
    exact: false,
    reason: 'the build configuration says how to bundle and knows nothing of what it bundles',
  },
  {
    name: 'launcher',
    files: /^exporters\/(bin\.cjs$|launcher\/)/,
    doors: [],
    packages: ['vite'],
    node: true,
    exact: false,
    reason: 'the launcher makes or finds the program of the command line and starts it, nothing more',
  },
  {
    name: 'command line',
    files: commandLine,
    doors: [geometryDoor],
    packages: ['dxf-writer', 'makerjs', 'commander'],
    node: true,
    exact: false,
    reason: 'the command line is exporters with files: it enters geometry by its door and knows no page',
  },
  {
    name: 'exporters',
    files: /^exporters\//,
    doors: [geometryDoor],
    packages: ['dxf-writer', 'makerjs', 'fflate', 'uqr', '@noble/hashes', 'maxrects-packer'],
    node: false,
    exact: true,
    reason: 'exporters enter geometry by its door and run in the page, where there are no files',
  },
  {
    name: 'app',
    files: /^app\//,
    doors: [geometryDoor, exportersDoor, /^sample-boxes\//],
    packages: [
      'react',
      'react-dom',
      'konva',
      'react-konva',
      'zustand',
      'idb',
      'zod',
      'workbox-precaching',
      'fflate',
    ],
    node: false,
    exact: false,
    reason: 'the page enters geometry and exporters by their doors',
  },
  {
    name: 'sample boxes',
    files: /^sample-boxes\//,
    doors: [],
    packages: [],
    node: false,
    exact: false,
    reason: 'sample boxes are data',
  },
  {
    name: 'tests',
    files: /^tests\//,
    doors: [/./],
    packages: ['*'],
    node: true,
    exact: false,
    reason: 'tests import everything',
  },
]

/** The room a file belongs to. */
export function roomOf(file: string): Room | undefined {
  return rooms.find((room) => room.files.test(file))
}

/** Files with which only themselves and the launcher may have to do, though they share a folder. */
export function isCommandLine(file: string): boolean {
  return commandLine.test(file)
}
