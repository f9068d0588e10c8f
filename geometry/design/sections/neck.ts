/** The neck blank, the board on it and the head. */
import { z } from 'zod'
import { choice, length, oneOf, woodName } from '../fields.ts'

export const neck = z
  .strictObject({
    length: length(914, 100, 2500, {
      label: 'Blank, long',
      help: 'Length of the neck blank before any cut.',
    }),
    width: length(38, 8, 200, {
      label: 'Blank, wide',
      help: 'Width of the neck blank, and of the neck at the box.',
    }),
    thickness: length(19, 3, 100, {
      label: 'Blank, thick',
      help: 'Thickness of the neck blank without a board.',
    }),
    widthAtNut: length(38, 8, 200, {
      label: 'Width at the nut',
      help: 'The same as the blank for a straight neck, less for one that tapers towards the nut.',
    }),
    ends: oneOf(['through the box', 'at a block'], 'through the box', {
      label: 'The neck ends',
      help: 'It runs through both end walls, or ends inside on a block glued to the neck-end wall and the base.',
    }),
    tail: length(38, 0, 300, {
      label: 'Tail',
      help: 'How far a through neck stands out behind the tail-end wall.',
      when: { ends: ['through the box'] },
    }),
    tongue: length(80, 5, 600, {
      label: 'Tongue',
      help: 'How far a neck that ends at a block reaches into the box, from the inside of the neck-end wall.',
      when: { ends: ['at a block'] },
    }),
    blockLength: length(40, 5, 300, {
      label: 'Block, long',
      help: 'Length of the block under the tongue, from the inside of the neck-end wall.',
      when: { ends: ['at a block'] },
    }),
    blockWidth: length(70, 5, 300, {
      label: 'Block, wide',
      help: 'Width of the block across the box.',
      when: { ends: ['at a block'] },
    }),
    rise: length(0, -60, 60, {
      label: 'Neck above the lid',
      help: 'Height of the neck’s top over the outer face of the lid: 0 is flush, below 0 is let in deeper.',
    }),
    relief: length(3, 0, 40, {
      label: 'Relief under the lid',
      help: 'How much deeper than the lid the notch goes, so that the lid is free of the neck.',
    }),
    reliefStart: length(10, 0, 100, {
      label: 'Relief starts',
      help: 'How far inside each end wall the relief begins; there the lid lies on the neck.',
    }),
    slotPlay: length(0.4, 0, 5, {
      label: 'Play in the slots',
      help: 'How much wider than the neck the slots in the walls are cut, both sides together.',
    }),
    wood: woodName('maple, sugar', {
      label: 'Neck of',
      help: 'Wood of the blank: a name of the table, or of your own woods.',
    }),
    bar: z
      .strictObject({
        kind: oneOf(['none', 'steel bar', 'steel rod', 'aluminium bar', 'carbon bar', 'carbon rod'], 'none', {
          label: 'Bar in the neck',
          help: 'Let into the top of the neck and glued there, under the board.',
        }),
        width: length(6, 1, 40, {
          label: 'Bar, wide',
          help: 'Across the neck; of a rod, its diameter.',
          when: { kind: ['steel bar', 'steel rod', 'aluminium bar', 'carbon bar', 'carbon rod'] },
        }),
        height: length(10, 1, 60, {
          label: 'Bar, tall',
          help: 'How deep it goes into the neck.',
          when: { kind: ['steel bar', 'aluminium bar', 'carbon bar'] },
        }),
        from: length(10, 0, 2000, {
          label: 'Bar from',
          help: 'From the nut to where the bar begins.',
          when: { kind: ['steel bar', 'steel rod', 'aluminium bar', 'carbon bar', 'carbon rod'] },
        }),
        to: length(450, 1, 2500, {
          label: 'Bar to',
          help: 'From the nut to where the bar ends.',
          when: { kind: ['steel bar', 'steel rod', 'aluminium bar', 'carbon bar', 'carbon rod'] },
        }),
      })
      .prefault({}),
  })
  .prefault({})

export const board = z
  .strictObject({
    fitted: choice(true, {
      label: 'Fretboard',
      help: 'A board glued on the neck; without one the frets go into the neck itself.',
    }),
    thickness: length(5, 1, 30, {
      label: 'Board, thick',
      help: 'Thickness of the fretboard.',
      when: { fitted: [true] },
    }),
    ends: oneOf(['after the last fret', 'at a length'], 'after the last fret', {
      label: 'The board ends',
      help: 'A little behind the last fret, or at a length that you give.',
      when: { fitted: [true] },
    }),
    beyond: length(12, 0, 400, {
      label: 'Behind the last fret',
      help: 'How far the board goes on behind its last fret.',
      when: { ends: ['after the last fret'] },
    }),
    length: length(440, 20, 1200, {
      label: 'Board, long',
      help: 'Length of the board from the nut.',
      when: { ends: ['at a length'] },
    }),
    wood: woodName('maple, sugar', {
      label: 'Board of',
      help: 'Wood of the fretboard: a name of the table, or of your own woods.',
      when: { fitted: [true] },
    }),
  })
  .prefault({})
