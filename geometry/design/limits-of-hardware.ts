/** Limits of what is drilled and screwed. Common practice without a published source, unless `why` says otherwise. */
import type { Limit } from './limit.ts'

const mm = (value: number, label: string, why: string): Limit => ({ value, unit: 'mm', label, why })

export const HARDWARE_LIMITS = {
  partsApart: mm(
    1,
    'Parts apart inside the box',
    'Between a pot, jack, pickup or screw and whatever else stands there. Common practice.',
  ),
  woodForNut: mm(
    2.5,
    'Wood for a nut to press on',
    'Under a jack, pot or switch, its backing plate counted in. Common practice.',
  ),
  shaftInKnob: mm(6, 'Shaft in its knob', 'Less slips or wobbles. Common practice.'),
  knobOffFace: mm(2, 'Knob off the face', 'More shows nut and thread. Common practice.'),
  woodUnderRecess: mm(
    1,
    'Wood under what is let in',
    'Under a countersink, a plate or a bore. Common practice.',
  ),
  rosetteWeb: mm(1.5, 'Wood between the holes of a rosette', 'Less breaks out. Common practice.'),
  coversApart: mm(3, 'Knobs and plates apart', 'Room for a finger. Common practice.'),
  screwHold: mm(
    10,
    'Thread of a screw in wood',
    'Behind the face it goes through; less tears out. Common practice.',
  ),
  woodBesideScrew: mm(1, 'Wood beside a screw', 'In the edge of a wall; less splits. Common practice.'),
  groundHoleClear: mm(
    2,
    'Ground wire hole to anything else',
    'To string holes, openings, screws, blocks and the edge of the wall. Common practice.',
  ),
  stringToPost: mm(
    0.5,
    'String past a post',
    'To a post on which another string winds; its turns need room. Common practice.',
  ),
  knobsApart: mm(2, 'Knobs of the tuners apart', 'Less and a finger turns two. Common practice.'),
  knobToHead: mm(3, 'Knob to the edge of the head', 'Less and fingers do not get round it. Common practice.'),
  tunersApart: mm(0.5, 'Tuners apart behind the head', 'Plates and housings side by side. Common practice.'),
  woodInHead: mm(
    4,
    'Wood round a post hole',
    'To the next hole and to the edge of the head; less splits. Common practice.',
  ),
  scarfGlued: mm(40, 'Glued face of a scarf', 'Along the slope; less gives way. Common practice.'),
} satisfies Record<string, Limit>
