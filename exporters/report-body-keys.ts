/** Keys of the report about the body: air, weight and balance. */
import { box4, mm, type ReportKey, rows, words } from './report-key.ts'

export const BODY_KEYS: readonly ReportKey[] = [
  ...words('inside[].', {
    id: 'Its id.',
    name: 'Its name, empty where it has none.',
    sort: '`corner block`, `neck block`, `liner`, `batten`, `hinge` or `clasp`.',
    fixed: '`on the base`, `on the walls` or `under the lid`.',
  }),
  ...box4('inside[].room.', 'Room it takes'),
  ...mm('inside[].room.', { minZ: 'Room it takes: its lower side.', maxZ: 'Room it takes: its upper side.' }),
  ...words('artwork[].', {
    id: 'Its id.',
    name: 'Its name, empty where it has none.',
    face: 'The face it is on.',
    shape: '`rectangle`, `oval` or `drawn`.',
  }),
  ...mm('artwork[].', { keep: 'Nothing is to be cut nearer to it than this.' }),
  ...box4('artwork[].bounds.', 'Its extent on its face, from the panel’s origin'),
  ...words('opening.', {
    by: '`hinge` or `slide`. `opening` is null for a lid that lifts off or is glued.',
    edge: 'The edge it is hinged on, or slides out over.',
  }),
  ...rows('radians', 'opening.', {
    angle: 'How far it swings before something stops it, or null for a slide.',
    angleWanted: 'How far it should, or null.',
  }),
  ...mm('opening.', {
    travel: 'How far it slides before something stops it, or null for a hinge.',
    travelWanted: 'How far it must to come off, or null.',
  }),
  ...words('opening.meets[].', {
    moving: 'What moves: the lid, or what hangs under it.',
    standing: 'What it meets or passes.',
  }),
  ...mm('opening.meets[].', {
    bite: 'How deep one goes into the other; 0 where they stay clear.',
    room: 'Least room between them; 0 where they bite.',
  }),
  ...rows('radians', 'opening.meets[].', { angle: 'The opening at which that is, or null for a slide.' }),
  ...mm('opening.meets[].', { after: 'How far it slides before they touch, or null for a hinge.' }),
  ...rows('mm³', 'air.', {
    emptyVolume: 'Between walls, lid and base, with nothing in it.',
    volume: 'What is left for the air.',
  }),
  ...words('air.', {
    'taken[].what': 'What takes room inside: structure by its name, or the id of a thing.',
  }),
  ...rows('mm³', 'air.', { 'taken[].volume': 'How much room it takes.' }),
  ...words('air.openings[].', { of: 'Id of the sound hole. Each of its openings is a row of its own.' }),
  ...rows('mm²', 'air.openings[].', { area: 'Area of the opening.' }),
  ...mm('air.openings[].', {
    thickness: 'Wood it goes through, a rim included.',
    conductance: 'Area over the length of the air that moves in it, both ends counted in.',
  }),
  ...words('air.', { 'blind[]': 'Ids of sound holes that do not lead into the box.' }),
  ...rows('hertz', 'air.note.', {
    hertz: 'Air resonance with stiff walls; an estimate. `note` is null where no air comes out.',
  }),
  ...words('air.note.', { name: 'Nearest key.' }),
  ...rows('cents', 'air.note.', { cents: 'How far it lies over that key.' }),
  ...words('air.nextSizes[].', { way: '`smaller` or `larger`: every hole made with the next bit.' }),
  ...mm('air.nextSizes[].', { 'sizes[]': 'Through sizes then, in the order of the openings.' }),
  ...words('air.nextSizes[].', { name: 'Nearest key then.' }),
  ...rows('hertz', 'air.nextSizes[].', { hertz: 'Air resonance then.' }),
  ...rows('cents', 'air.nextSizes[].', { cents: 'How far the note moves, up where positive.' }),
  ...rows('grams', 'weight.', { total: 'What all of it weighs; an estimate.' }),
  ...mm('weight.', {
    balancePoint: 'From the nut to where it balances.',
    fromNeckEnd: 'From the neck-end face of the box to there, towards the tail.',
  }),
  ...words('weight.pieces[].', { what: 'The piece: structure by its name, or the id of a thing.' }),
  ...rows('grams', 'weight.pieces[].', { mass: 'What it weighs.' }),
  ...mm('weight.pieces[].', { fromNut: 'From the nut to its middle.' }),
  ...words('weight.pieces[].', {
    from: 'Where the number comes from: `volume and density`, `unit mass` or `stated`.',
    wood: 'The wood reckoned with, or null.',
  }),
  ...words('weight.held.', {
    by: '`the lap` or `the strap`. `held` is null until it is stated.',
    drops: 'Which end goes down: `head`, `tail` or `neither`.',
  }),
  ...mm('weight.held.', {
    fromNut: 'From the nut to where it is held.',
    arm: 'From there to the balance point, towards the head.',
    levelAt: 'Held there it would be level: from the neck-end face, towards the tail.',
  }),
  ...rows('newtons', 'weight.held.', {
    atNut: 'What a hand at the nut bears to keep it level, up where positive.',
  }),
  ...rows('grams', 'weight.held.', {
    ballast: 'Weight where the ballast lies that makes it level, or null.',
  }),
]
