/** How the parts are cut, and from what sheets. Parts stay as drawn; only what a machine follows is moved. */
import { z } from 'zod'
import { count, length, oneOf } from '../fields.ts'

const LASER = { process: ['laser'] }
const ROUTER = { process: ['router'] }
const MACHINE = { process: ['laser', 'router'] }

const kerfOf = (what: string) =>
  length(0.2, 0, 5, {
    label: `Kerf in the ${what}`,
    help: `Width of wood that the beam takes away in the stuff of the ${what}; 0.1 to 0.35 mm is usual (common practice).`,
    when: { process: ['laser'], kerfs: ['for each material'] },
  })

export const cutting = z
  .strictObject({
    process: oneOf(['by hand', 'laser', 'router'], 'by hand', {
      label: 'Cut',
      help: 'By hand along the line as drawn; or by a laser or router, whose path is moved by half of what it takes away.',
    }),
    kerfs: oneOf(['one for all', 'for each material'], 'one for all', {
      label: 'Kerf',
      help: 'Width of wood that the beam takes away: one for all, or one for each material.',
      when: LASER,
    }),
    kerf: length(0.2, 0, 5, {
      label: 'Kerf',
      help: 'Width of wood that the beam takes away, to be found with the test piece; 0.1 to 0.35 mm is usual (common practice). With one for each material, that of all other parts.',
      when: LASER,
    }),
    kerfLid: kerfOf('lid'),
    kerfBase: kerfOf('base'),
    kerfWalls: kerfOf('walls'),
    kerfNeck: kerfOf('neck'),
    kerfBoard: kerfOf('board'),
    cutter: length(3.175, 0.2, 30, {
      label: 'Cutter',
      help: 'Diameter of the cutter as it cuts, to be found with the test piece.',
      when: ROUTER,
    }),
    relief: oneOf(['none', 'dog-bone', 'T'], 'dog-bone', {
      label: 'Inside corners',
      help: 'A round cutter leaves inside corners round. A dog-bone runs into the corner, a T along the longer side past it, so that a square corner goes in.',
      when: ROUTER,
    }),
    slots: oneOf(['sawn by hand', 'cut by the machine'], 'sawn by hand', {
      label: 'Saw slots',
      help: 'Fret slots as lines to saw by, or as narrow areas that the machine cuts to their width.',
      when: MACHINE,
    }),
    web: length(2, 0, 30, {
      label: 'Smallest web',
      help: 'Wood left between two cuts, or a cut and an edge; less breaks or burns away. At least 2 mm and the thickness of the sheet is usual (common practice).',
      when: MACHINE,
    }),
    tabs: count(0, 0, 12, {
      label: 'Tabs',
      help: 'Bridges left in each outline so that the part stays in the sheet; 0 for none.',
      when: MACHINE,
    }),
    tabWidth: length(4, 0.5, 30, {
      label: 'Tab, wide',
      help: 'Width of each bridge in the wood.',
      when: MACHINE,
    }),
    tabHeight: length(1.5, 0.2, 30, {
      label: 'Tab, tall',
      help: 'Height of wood that the router leaves standing in each bridge; a laser leaves all of it.',
      when: ROUTER,
    }),
    sheetLength: length(600, 50, 5000, {
      label: 'Sheet, long',
      help: 'Stock that parts are laid out on: along its grain, if it has any.',
    }),
    sheetWidth: length(400, 50, 5000, { label: 'Sheet, wide', help: 'Stock, across its grain.' }),
    sheetMargin: length(5, 0, 200, {
      label: 'Free edge',
      help: 'Rim of the sheet that stays free of parts, for clamps and torn edges.',
    }),
    sheetSpacing: length(5, 0, 100, {
      label: 'Between parts',
      help: 'Least space between parts on a sheet; never less than what the tool takes away.',
    }),
    sheetGrain: oneOf(['along the sheet', 'does not matter'], 'along the sheet', {
      label: 'Grain',
      help: 'Runs along the sheet, and parts lie with theirs along it; or parts may lie either way.',
    }),
  })
  .prefault({})
