/** The work in its order, with the numbers of this instrument and each caution at the step it belongs to. */
import type { Step } from './model.ts'
import type { Source } from './source.ts'
import { madeWords } from './tables/head.ts'

/** Kinds of thing that are wired. */
const WIRED = /pickup|control|jack|pot|switch/

/** Steps from the first template to the last tuning. The same design gives the same steps. */
export function stepsOf(source: Source): Step[] {
  return [...cutting(source), ...joining(source), ...finishing(), ...wiring(source), ...stringing(source)]
}

function cutting({ report, say }: Source): Step[] {
  return [
    {
      title: 'Print and prove the templates',
      words:
        'Print at 100 %, measure the 100 mm bar both ways, then lay every template on the wood and look at it before you cut.',
      caution:
        'A wrong hole cannot be taken back: try every bit and blade on a scrap of the same wood first.',
    },
    {
      title: 'Saw and thickness the neck',
      words: `Blank ${say(report.neck.needs.total)} long. Mark the nut line first: everything along the neck is measured from there.${scarfWords(report.headstock, say)}`,
      caution:
        'Saw, router and drill: clamp the work, keep hands behind the edge, take off gloves and loose sleeves, protect eyes and ears.',
    },
    {
      title: 'Open the box',
      words: `Small holes before large ones, the neck slots last${
        report.neck.slots.length > 0
          ? `: ${report.neck.slots
              .map((slot) => `${say(slot.width)} wide and ${say(slot.depth)} deep`)
              .filter((one, index, all) => all.indexOf(one) === index)
              .join(', ')}`
          : ''
      }. Back the face with scrap where the bit comes through.`,
      caution:
        'On a laser: never vinyl, PVC or a plastic you do not know, they give off chlorine. Stay with the machine while it burns.',
    },
  ]
}

/** A scarf is made before anything else on the neck. */
function scarfWords(head: Source['report']['headstock'], say: Source['say']): string {
  if (!head.scarf) return ''
  return ` ${madeWords(head, say)} Plane both slopes true in one go, and let a block on the board keep the wedge from sliding while it is clamped.`
}

function joining({ report, say }: Source): Step[] {
  const frets = report.frets.filter((one) => one.number > 0).length
  return [
    ...(frets > 0
      ? [
          report.scale.fretless
            ? {
                title: 'Mark the lines to play to',
                words: `${frets} lines, every one from the nut, none from the line before.`,
              }
            : {
                title: 'Saw the fret slots',
                words: `${frets} slots, every one measured from the nut, none from the slot before. Check the last step against the table, then press the frets and file their ends.`,
              },
        ]
      : []),
    {
      title: 'Fit the neck dry',
      words: `The lid must close, and a straightedge on the neck must meet the saddle’s place. Saddle line ${say(report.saddle.fromEdge)} from the lid’s edge at the neck.`,
    },
  ]
}

const finishing = (): Step[] => [
  {
    title: 'Glue, sand and finish',
    words:
      'Glue the neck, let it stand a day, then ease edges and finish. Keep labels and prints of the box dry.',
    caution:
      'Wear a dust mask: oak, cedar and tropical woods harm the lungs. An old finish may hold lead; do not sand it dry.',
  },
]

function wiring({ design }: Source): Step[] {
  const wired = design.wiring.components.length > 0 || design.things.some(({ kind }) => WIRED.test(kind))
  if (!wired) return []
  return [
    {
      title: 'Wire it',
      words:
        'Wire on the bench before anything is screwed in. Every metal part the hand can touch goes to the sleeve of the jack.',
      caution: 'Solder in moving air and wash your hands afterwards.',
    },
    {
      title: 'Try it through an amplifier',
      words: 'Tap the pickup before you string it. If it hums, look for the metal part that is not grounded.',
      caution:
        'A mains amplifier is to be earthed by a qualified person after local codes. Never play through one whose earth was cut off.',
    },
  ]
}

function stringing({ design, report, say }: Source): Step[] {
  const { saddle, pull } = report
  const tuned = report.strings.every((one) => one.pitch)
  const notes = [...report.strings].map((one) => one.pitch?.name ?? '').join(' ')
  return [
    {
      title: 'String it and bring it to pitch',
      words: `Set the saddle on its line, ${say(saddle.fromNut)} from the nut. ${tuned ? `Bring all strings up together, a third of the way at a time: ${notes}${pull.total === null ? '' : `, ${pull.total.toFixed(0)} N in all`}.` : 'Bring all strings up together, a third of the way at a time.'}`,
      caution:
        'A string under tension can break: protect your eyes, above all the first time, and keep your face out of its line.',
    },
    {
      title: 'Set heights',
      words: `File the nut slots, then the saddle, until the strings stand ${say(design.saddle.action)} over the octave. Let it stand under tension for a day and look again.`,
    },
    {
      title: 'Set the octaves',
      words: report.scale.fretless
        ? 'Stop each string at the octave line and move the saddle until it is true to the open string.'
        : 'Play each string open and at the octave fret. Sharp: move the saddle back. Flat: move it towards the nut. Then mark where it stands.',
    },
    {
      title: 'Write down how it came out',
      words:
        'Measure again and write the measures beside the plan below; then who strung it, when, and with which strings.',
    },
  ]
}
