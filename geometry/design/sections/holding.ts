/** What the strings stand on and are held by: saddle, tailpiece and the brace under the lid. */
import { z } from 'zod'
import { count, length, oneOf, woodName } from '../fields.ts'
import { along } from '../place.ts'

export const saddle = z
  .strictObject({
    place: along(
      { share: 0.72 },
      'Saddle along the lid',
      'From the neck-end edge of the lid to the saddle line. This decides where the box sits under the strings.',
    ),
    setback: length(0, -10, 20, {
      label: 'Setback',
      help: 'How far behind the bare scale length the saddle line is drawn, because fretting sharpens.',
    }),
    thickness: length(5, 1, 40, { label: 'Saddle, thick', help: 'Foot of the saddle, along the strings.' }),
    length: length(50, 3, 300, { label: 'Saddle, long', help: 'Across the strings.' }),
    height: length(12, 1, 80, {
      label: 'Saddle, tall',
      help: 'From the outer face of the lid to the underside of the strings. A little under half an inch is usual.',
    }),
    action: length(2.2, 0.3, 20, {
      label: 'Action wanted',
      help: 'Strings over the crown of the octave fret, or over a bare board: 1.5 to 2.5 mm with frets, 4 to 8 mm for slide (common practice).',
    }),
    freeBand: length(6, 0, 40, {
      label: 'Free to move',
      help: 'How far before and behind its line a loose saddle must be able to move.',
    }),
  })
  .prefault({})

export const tailpiece = z
  .strictObject({
    at: oneOf(['the tail of the neck', 'the tail-end wall', 'the lid'], 'the tail of the neck', {
      label: 'Strings are held at',
      help: 'Holes down through the tail of a through neck, through the tail-end wall, or through the lid.',
    }),
    holes: count(3, 1, 24, {
      label: 'Holes',
      help: 'Holes in one row; more than strings serve several counts, as five serve four and three.',
      when: { row: ['equal holes'] },
    }),
    row: oneOf(['equal holes', 'for each count'], 'equal holes', {
      label: 'The row has',
      help: 'Equal holes, from which every count takes what lies best; or a hole for every string of each count, shared where two would leave too little wood.',
    }),
    alsoFor: count(0, 0, 12, {
      label: 'Also for',
      help: 'Another count of strings that the same holes must serve, as 3 beside 4; 0 for none.',
    }),
    andFor: count(0, 0, 12, { label: 'And for', help: 'A third count; 0 for none.' }),
    groundHole: length(0, 0, 10, {
      label: 'Ground wire hole',
      help: 'Diameter of a hole through the tail-end wall beside the neck for the wire that grounds the strings, 3 mm and a grommet is usual (common practice); 0 for none.',
    }),
    span: length(26, 0, 300, {
      label: 'Outer holes',
      help: 'From the centre of the first hole to the centre of the last.',
    }),
    fromEdge: length(14, 1, 300, {
      label: 'Holes from the edge',
      help: 'On the tail, from the tail-end wall’s outer face; on the wall, down from its lid-side edge; on the lid, from its tail-end edge.',
    }),
    diameter: length(2.4, 0.5, 12, {
      label: 'Hole',
      help: 'Diameter: 2 to 2.5 mm for the string alone, 5 mm where the ball end goes through (common practice).',
    }),
    takes: oneOf(['the string alone', 'the ball end'], 'the string alone', {
      label: 'The holes take',
      help: 'The string alone, with the ball end behind; or the ball end, pushed through from the front.',
    }),
  })
  .prefault({})

export const brace = z
  .strictObject({
    height: length(0, 0, 60, {
      label: 'Brace, tall',
      help: 'Height of a strip glued under the lid; 0 for none.',
    }),
    width: length(8, 1, 100, { label: 'Brace, wide', help: 'Width of the strip where it is glued.' }),
    runs: oneOf(['across', 'along'], 'across', {
      label: 'It runs',
      help: 'Across the strings, or along them, over the whole inside of the box.',
    }),
    offset: length(0, -500, 500, {
      label: 'It lies',
      help: 'Across: its middle behind the saddle line, before it where negative. Along: from the centreline, treble positive.',
    }),
    wood: woodName('spruce, sitka', {
      label: 'Brace of',
      help: 'Wood of the strip: a name of the table, or of your own woods.',
    }),
  })
  .prefault({})
