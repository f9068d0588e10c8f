/**
 * Every limit that a finding is held against: one named default each, to be changed per design under `limits`.
 *
 * All figures are starting values of common practice without a published source, unless `why` says otherwise.
 */
import type { Limit } from './limit.ts'
import { HARDWARE_LIMITS } from './limits-of-hardware.ts'
import { LOAD_LIMITS } from './limits-of-loads.ts'

export type { Limit }

const mm = (value: number, label: string, why: string): Limit => ({ value, unit: 'mm', label, why })

export const LIMITS = {
  openingToEdge: mm(
    12,
    'Opening to the edge of its face',
    'Less wood than this at an edge splits easily. Common practice.',
  ),
  screwToEdge: mm(
    1.5,
    'Screw to the edge of its face',
    'From the rim of the head; in the edge of a wall there is little more. Common practice.',
  ),
  betweenOpenings: mm(
    8,
    'Wood between openings',
    'At least this, and never less than the radius of the larger hole. Common practice.',
  ),
  screwToOpening: mm(6, 'Screw to an opening', 'A screw needs wood all round. Common practice.'),
  openingToNeck: mm(
    6,
    'Opening to the neck',
    'A hole beside the neck needs room for the drill and the eye. Common practice.',
  ),
  openingToWall: mm(
    6,
    'Opening to the inside of a wall',
    'Nearer than this the wall shows and the drill catches it. Common practice.',
  ),
  saddleToTailWall: mm(
    30,
    'Saddle to the inside of the tail-end wall',
    'Beside the wall the lid cannot move; 40 to 60 mm is better. Some do it on purpose. Common practice.',
  ),
  saddleToOpening: mm(20, 'Saddle to an opening', 'The lid carries the strings here. Common practice.'),
  stringToBoardEdge: mm(
    2.5,
    'String to the edge of the board',
    'A string nearer the edge slips off when it is pressed. Common practice.',
  ),
  stringsApartAtNut: mm(
    6.5,
    'Strings apart at the nut',
    'Centre to centre; nearer and a finger stops two. Common practice.',
  ),
  stringsApartAtSaddle: mm(
    9,
    'Strings apart at the saddle',
    'Centre to centre; 9 to 12 mm is usual. Slide players and pickers differ. Common practice.',
  ),
  stringInsidePickup: mm(
    1,
    'String inside the active width',
    'From the outer string to the end of what the pickup hears. Common practice.',
  ),
  wallUnderSlot: mm(
    6,
    'Wall left under a neck slot',
    'Less breaks out when the neck is pushed in. Common practice.',
  ),
  wallBesideSlot: mm(
    15,
    'Wall left beside a neck slot',
    'From the slot to the corner joint. Common practice.',
  ),
  neckLeft: mm(10, 'Neck left at its thinnest', 'Hardwood over the box, all cuts together. Common practice.'),
  neckStiffnessLeft: {
    value: 0.12,
    unit: 'share',
    label: 'Stiffness left at the thinnest',
    why: 'The cube of thickness left over thickness of the blank; under this, necks broke. Common practice.',
  } as Limit,
  tailHoleWeb: mm(
    4,
    'Wood between tail holes',
    'At least this, and never less than one hole diameter. Common practice.',
  ),
  tailHoleToEndGrain: mm(
    10,
    'Tail hole to end grain',
    'Nearer, the string splits the tail. Common practice.',
  ),
  beyondLastFret: mm(3, 'Board behind the last fret', 'A slot nearer the end breaks out. Common practice.'),
  underNeck: mm(
    2,
    'Room under the neck or hardware',
    'Between what hangs inside and the base. Common practice.',
  ),
  ...HARDWARE_LIMITS,
  blankSpare: mm(3, 'Blank left over', 'For squaring both ends. Common practice.'),
  firstPost: mm(38, 'First post behind the nut', 'Nearer, the string is hard to wind. Common practice.'),
  firstPostLeast: mm(
    30,
    'First post behind the nut, at the very least',
    'Nearer, it cannot be strung. Common practice.',
  ),
  postsApart: mm(23, 'Posts apart', 'Single machines in line need 23 to 26 mm. Common practice.'),
  rimShare: {
    value: 0.5,
    unit: 'share',
    label: 'Depth of a rim',
    why: 'As a share of the face’s thickness; deeper leaves too little. Common practice.',
  } as Limit,
  openingToInside: mm(
    6,
    'Opening to a block or batten',
    'Nearer, a hole shows it, or is stopped up. Common practice.',
  ),
  blockTouches: mm(
    0.5,
    'Neck block to what lies on it',
    'A block under the neck is glued in where it just touches. Common practice.',
  ),
  lidClear: mm(
    0.5,
    'Room round a lid that opens',
    'At every angle, to neck, blocks and walls. Common practice.',
  ),
  rimLedge: mm(3, 'Ledge of a rim', 'Narrower, a ring has nothing to sit on. Common practice.'),
  sideAngleAtSaddle: {
    value: 3,
    unit: 'degrees',
    label: 'Sideways angle over the saddle',
    why: 'More and the string creeps or the saddle walks. Common practice.',
  } as Limit,
  sideAngleAtNut: {
    value: 8,
    unit: 'degrees',
    label: 'Sideways angle at the nut',
    why: 'More and the string binds in its slot. Common practice.',
  } as Limit,
  outOfSquare: mm(
    1.5,
    'Out of square over the length',
    'More than this and what is laid out from an edge no longer meets what is laid out from the centreline. Common practice.',
  ),
  boxTwist: mm(1, 'Twist of the walls', 'More than this and a flat lid rocks on them. Common practice.'),
  wiringHeard: {
    value: 0.7,
    unit: 'share',
    label: 'Pickup heard at the jack',
    why: 'Of the lowest note, with all knobs for it: 0.7 is 3 dB less. Common practice.',
  } as Limit,
  ...LOAD_LIMITS,
} satisfies Record<string, Limit>

export type LimitName = keyof typeof LIMITS
