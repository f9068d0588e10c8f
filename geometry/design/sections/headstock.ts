/** The head, its posts, and the tuners that stand in it. */
import { z } from 'zod'
import { count, length, measure, oneOf } from '../fields.ts'

export const headstock = z
  .strictObject({
    form: oneOf(['straight', 'stepped', 'scarfed'], 'straight', {
      label: 'Head',
      help: 'Straight: its front carved down behind a slope. Stepped: its face lower by a step behind the nut. Scarfed: the stick sawn through at an angle, its end glued back on, tilted.',
    }),
    length: length(150, 20, 400, {
      label: 'Headstock, long',
      help: 'From the front edge of the nut to the end of the head, along its face.',
    }),
    width: length(38, 8, 300, {
      label: 'Headstock, wide',
      help: 'Width of the head; wider than the blank means cheeks glued on.',
    }),
    thickness: length(14, 3, 100, {
      label: 'Headstock, thick',
      help: 'What is left after the head’s front is carved down; 13 to 16 mm suits ordinary tuners (common practice).',
    }),
    step: length(8, 0, 60, {
      label: 'Step down',
      help: 'How much lower than the top of the neck the face of the head lies.',
      when: { form: ['stepped'] },
    }),
    tiltDegrees: measure('degrees', 13, 4, 30, {
      label: 'Tilt',
      help: 'The angle by which the head falls away; 10 to 17 degrees are usual (common practice).',
      when: { form: ['scarfed'] },
    }),
    ramp: length(20, 0, 150, {
      label: 'Slope behind the nut',
      help: 'Length of the slope from the nut down to the face of the head.',
      when: { form: ['straight'] },
    }),
    bassTuners: count(2, 0, 12, {
      label: 'Tuners, bass side',
      help: 'Tuner posts along the bass edge of the head.',
    }),
    trebleTuners: count(1, 0, 12, {
      label: 'Tuners, treble side',
      help: 'Tuner posts along the treble edge.',
    }),
    firstPost: length(45, 1, 300, {
      label: 'First post behind the nut',
      help: 'From the front edge of the nut to the centre of the nearest post, along the face.',
    }),
    postSpacing: length(32, 5, 100, {
      label: 'Between posts',
      help: 'From centre to centre along one edge.',
    }),
    stagger: length(0, -50, 50, {
      label: 'Treble posts farther back',
      help: 'How far the treble row stands behind the bass row.',
    }),
    postStep: length(0, -30, 30, {
      label: 'Each post farther in',
      help: 'How much nearer the other side each post stands than the one before it; the edge follows. For posts in line, about as far as the strings stand apart.',
    }),
    postEdge: length(12, 3, 80, {
      label: 'Post to edge',
      help: 'From the edge of the head to the centre of each post.',
    }),
    postHole: length(8, 1, 20, {
      label: 'Post hole',
      help: 'Diameter of the hole for the post or its bushing. Measure yours.',
    }),
    post: length(6, 1, 20, {
      label: 'Post',
      help: 'Diameter of the post where the string winds. Measure yours.',
    }),
    postHeight: length(4, 0, 30, {
      label: 'String over the head',
      help: 'Height over the face of the head at which a string winds on its post.',
    }),
    bushing: oneOf(['none', 'let in'], 'none', {
      label: 'Bushing',
      help: 'Let in: the front of the post hole is bored wider for a bushing.',
    }),
    bushingHole: length(8.7, 2, 25, {
      label: 'Bushing hole',
      help: 'Diameter of the hole that takes the bushing. Measure yours.',
      when: { bushing: ['let in'] },
    }),
    bushingDepth: length(7, 0.5, 40, {
      label: 'Bushing, deep',
      help: 'How deep the bushing goes in from the face of the head.',
      when: { bushing: ['let in'] },
    }),
    bodyLong: length(22, 0, 80, {
      label: 'Tuner, along the edge',
      help: 'Plate or housing along the edge of the head, the post in its middle.',
    }),
    bodyIn: length(5, 0, 60, {
      label: 'Tuner, in from the post',
      help: 'From the middle of the post to the end of plate or housing, away from the edge.',
    }),
    knobWide: length(14, 0, 60, {
      label: 'Knob, wide',
      help: 'Its greatest width as it is turned; 0 for none.',
    }),
    knobFrom: length(18, 0, 100, {
      label: 'Knob begins',
      help: 'From the middle of the post to the near end of the knob.',
    }),
    knobLong: length(14, 1, 80, {
      label: 'Knob, long',
      help: 'From its near end to its far end.',
    }),
    screws: count(0, 0, 2, {
      label: 'Screws to each tuner',
      help: 'Drilled from behind: one, or two alike on both sides of the post.',
    }),
    screwAlong: length(7.5, 0, 40, {
      label: 'Screw beside the post',
      help: 'From the middle of the post, along the edge.',
    }),
    screwIn: length(0, -40, 40, {
      label: 'Screw in from the post',
      help: 'From the middle of the post, away from the edge; less than 0 is towards it.',
    }),
    screwPilot: length(1.5, 0.5, 6, {
      label: 'Pilot hole',
      help: 'Diameter; 1.2 to 1.5 mm for tuner screws (common practice).',
    }),
    screwDepth: length(9, 1, 40, {
      label: 'Pilot, deep',
      help: 'How deep it is drilled from the back of the head.',
    }),
    reinforcement: length(0, 0, 40, {
      label: 'Glued under the head',
      help: 'Thickness of a piece glued on underneath, where the head begins; 0 for none.',
    }),
    reinforcementLength: length(90, 10, 400, {
      label: 'Glued piece, long',
      help: 'Its length; its middle lies under the slope behind the nut.',
    }),
  })
  .prefault({})
