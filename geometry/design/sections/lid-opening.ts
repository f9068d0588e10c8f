/** How a lid opens: its hinge or its slide, and what is taken off so that it can. */
import { length, measure, oneOf } from '../fields.ts'

const hinged = { kind: ['hinged'] }

export const lidOpening = {
  hingeEdge: oneOf(['bass wall', 'treble wall', 'neck end', 'tail end'], 'bass wall', {
    label: 'Hinged on',
    help: 'The edge that stays when the lid opens. Across the neck the neck is in the way.',
    when: hinged,
  }),
  hingeIn: length(0, -40, 100, {
    label: 'Hinge pin, in from the edge',
    help: 'From the outer face of that wall to the middle of the pin, inwards; a pin that stands out behind is negative.',
    when: hinged,
  }),
  hingeDown: length(4, -40, 100, {
    label: 'Hinge pin, below the lid',
    help: 'From the lid’s outer face down to the middle of the pin; above the face, negative.',
    when: hinged,
  }),
  opens: measure('degrees', 90, 5, 180, {
    label: 'Should open',
    help: 'As far as hands and screwdriver need.',
    when: hinged,
  }),
  bevelAtHinge: length(0, 0, 60, {
    label: 'Bevel at the hinge',
    help: 'How far the lid’s upper edge is planed back along the hinge, running out to nothing below; 0 for none.',
    when: hinged,
  }),
  bevelOpposite: length(0, 0, 60, {
    label: 'Bevel opposite the hinge',
    help: 'How far the lid’s lower edge is planed back on the side that opens, running out to nothing above; 0 for none.',
    when: hinged,
  }),
  slidesTo: oneOf(['bass wall', 'treble wall', 'neck end', 'tail end'], 'tail end', {
    label: 'Slides out over',
    help: 'The edge over which the lid comes out.',
    when: { kind: ['sliding'] },
  }),
  gap: length(0, 0, 10, {
    label: 'Gap at the neck',
    help: 'Room between the ends of a lid on the walls and the shoulders of the neck’s notch: the notch is cut that much longer at each end. A lid that must open wants about 0.8 mm (common practice).',
    when: { kind: ['lift-off', 'hinged', 'sliding'] },
  }),
} as const
