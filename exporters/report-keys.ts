/** What each key of the JSON report holds: for the documentation, and for whoever reads a report. */
import { BODY_KEYS } from './report-body-keys.ts'
import { HEAD_KEYS } from './report-head.ts'
import { HEARING_KEYS } from './report-hearing.ts'
import { box4, counts, mm, type ReportKey, rows, words, yesNo } from './report-key.ts'
import { SCHEDULE_KEYS } from './report-schedule.ts'
import { SURVEY_KEYS, TOLERANCE_KEYS } from './report-survey-keys.ts'
import { WIRING_KEYS } from './report-wiring.ts'

export type { ReportKey }

/** In the order in which the report holds them. */
export const REPORT_KEYS: readonly ReportKey[] = [
  ...words('', { format: 'Always `lidwright-report`.' }),
  ...counts('', { version: 'Version of this report; raised when a key changes its meaning or goes away.' }),
  ...words('', { title: 'Title of the design.', hand: '`right`, `left` or `not stated`.' }),
  ...words('units.', {
    lengths: 'Always `mm`: the unit of every length below.',
    angles: 'Always `radians`: the unit of every angle below. Only `findings[]` say their own unit.',
    shown: 'The builder’s unit, in which sentences speak: `mm` or `inches`.',
  }),
  ...counts('units.', { fraction: 'Smallest fraction of an inch on the builder’s rule, 0 for decimals.' }),
  ...mm('scale.', { length: 'Scale length.' }),
  ...words('scale.', { start: '`nut` or `zero fret`: where x is 0.' }),
  ...yesNo('scale.', { zeroFret: 'Is there a zero fret?', fretless: 'Are the frets only marked?' }),
  ...words('scale.', { by: 'How the frets are stated: `equal`, `steps`, `cents` or `ratios`.' }),
  ...mm('scale.', { saddleLine: 'From the nut to the saddle line: scale length and setback.' }),
  ...counts('frets[].', { number: '1 for the first behind the nut; 0 for a zero fret.' }),
  ...mm('frets[].', {
    fromNut: 'From the nut. Measure every fret from there.',
    step: 'From the fret before; only to check the work by.',
  }),
  ...rows('cents', 'frets[].', { cents: 'Interval above the open string.' }),
  ...yesNo('frets[].', {
    overBox: 'Does it lie over the box?',
    onWood: 'Does it lie on the board or the neck?',
  }),
  ...mm('frets[].', { yBass: 'Bass end of the fret.', yTreble: 'Treble end of the fret.' }),
  ...words('frets[].', { 'onRule.text': '`fromNut` as the builder’s rule shows it.' }),
  ...mm('frets[].', { 'onRule.error': 'What the rule shows, less what is true.' }),
  ...counts('strings[].', {
    index: '0 for the bass string.',
    number: '1 for the treble string, as the trade counts.',
  }),
  ...mm('strings[].', {
    gauge: 'Diameter.',
    yAtNut: 'Across, at the nut.',
    yAtSaddle: 'Across, at the saddle.',
    zAtNut: 'Underside of the string at the nut.',
    zAtSaddle: 'Underside of the string at the saddle.',
  }),
  ...rows('radians', 'strings[].', {
    sideAngleAtSaddle: 'Sideways turn over the saddle; 0 where the string has no hole.',
    sideAngleAtNut: 'Sideways turn at the nut; 0 where the string has no post.',
  }),
  ...counts('strings[].', {
    'tail.hole': 'Hole it runs to, 1 on the bass side. `tail` is null where holes are missing.',
  }),
  ...words('strings[].', { 'pitch.name': 'Nearest key. `pitch` is null until a tuning is stated.' }),
  ...rows('hertz', 'strings[].', { 'pitch.hertz': 'Frequency of the open string.' }),
  ...rows('cents', 'strings[].', { 'pitch.cents': 'How far it lies over that key.' }),
  ...rows('g/m', 'strings[].', { unitMass: 'Mass of a metre, or null for a string that cannot be made.' }),
  ...rows('newtons', 'strings[].', {
    tension: 'Pull at pitch over the bare scale, or null.',
    breakingLoad: 'Pull that breaks it, or null.',
  }),
  ...rows('share', 'strings[].', { shareOfBreaking: '`tension` over `breakingLoad`, or null.' }),
  ...words('strings[].', { feel: '`slack`, `comfortable`, `high` or `breaking`, or null.' }),
  ...mm('strings[].', {
    setback: 'How far behind the bare scale the saddle makes its octave true; an estimate, or null.',
  }),
  ...rows('cents', 'strings[].', {
    'centsAtFret[]': 'Over the intended interval at every fret, saddle and nut as stated; an estimate.',
    'centsAtBareScale[]': 'The same with the saddle at the bare scale.',
    'centsAtOwnSetback[]': 'The same with the saddle at the string’s own setback.',
  }),
  ...rows('radians', 'strings[].', {
    breakAngle: 'How far it bends over the saddle, or null where no hole holds it.',
    breakAngleAtNut: 'How far it falls away behind the nut, or null where it has no post.',
  }),
  ...rows('newtons', 'strings[].', { downForce: 'What it presses on the saddle with, or null.' }),
  ...mm('strings[].tail.', {
    fromNut: 'From the nut to that hole.',
    fromCentreline: 'From the centreline to that hole.',
    z: 'Height of that hole.',
  }),
  ...mm('strings[].post.', {
    fromNut: 'From the nut to its post, negative. `post` is null where posts are missing.',
    fromCentreline: 'From the centreline to its post.',
  }),
  ...mm('box.', {
    length: 'Outside, along the neck.',
    width: 'Outside, across.',
    depth: 'Outside, through lid and base.',
    x0: 'Outer face of the neck-end wall, from the nut.',
    x1: 'Outer face of the tail-end wall, from the nut.',
    insideX0: 'Inner face of the neck-end wall.',
    insideX1: 'Inner face of the tail-end wall.',
    insideBass: 'Inner face of the bass wall.',
    insideTreble: 'Inner face of the treble wall.',
    halfWidth: 'From the centreline to a side wall’s outer face.',
    lidBottom: 'Inner face of the lid.',
    wallTop: 'Lid-side edge of the walls.',
    wallBottom: 'Base-side edge of the walls.',
    baseTop: 'Inner face of the base.',
    baseBottom: 'Outer face of the base.',
  }),
  ...SURVEY_KEYS,
  ...words('panels[].', { face: 'Name of the face.' }),
  ...mm('panels[].', {
    fromNut:
      'From the nut to the panel’s origin: its neck-end edge on lid and base, its middle on a side wall, its outer face on an end wall.',
    long: 'Length of the panel: along the neck; of an end wall, across it.',
    across: 'The other way.',
    thickness: 'Thickness.',
  }),
  ...mm('neck.', {
    x0: 'End of the head.',
    x1: 'End of the tail or tongue.',
    top: 'Top of the neck.',
    bottom: 'Underside of the neck.',
    playingTop: 'What the strings are pressed on: the board, or the bare neck.',
    'halfWidths[].x': 'Where the neck’s side changes direction.',
    'halfWidths[].half': 'Half the width there.',
  }),
  ...words('neck.stretches[].', {
    of: '`headstock`, `slope`, `neck`, `notch`, `relief`, `pickup relief` or `tail`.',
  }),
  ...mm('neck.stretches[].', {
    x0: 'Where the stretch begins.',
    x1: 'Where it ends.',
    top: 'Its top.',
    bottom: 'Its underside.',
    left: 'What is left of the blank’s thickness.',
  }),
  ...words('neck.', {
    'stretches[].because': 'Id of the thing that makes the cut necessary, or null.',
    'cuts[].of': 'A cut into the top before overlaps are sorted out: `notch`, `relief` or `pickup relief`.',
  }),
  ...mm('neck.cuts[].', { x0: 'Where the cut begins.', x1: 'Where it ends.', top: 'Height of its floor.' }),
  ...words('neck.', {
    'cuts[].because': 'Id of the thing that makes the cut necessary, or null.',
    'slots[].face': 'The wall that is slotted.',
  }),
  ...mm('neck.slots[].', {
    width: 'Width of the slot.',
    depth: 'Down from the wall’s lid-side edge.',
    wallLeftBelow: 'Wall left under the slot.',
    wallLeftBeside: 'Wall left beside the slot, to the corner joint.',
  }),
  ...mm('neck.thinnest.', {
    left: 'The least thickness left inside the box.',
    x0: 'Where it begins.',
    x1: 'Where it ends.',
  }),
  ...words('neck.', { 'thinnest.of': 'What makes it so thin.' }),
  ...box4('neck.block.', 'Block under a tongue; `block` is null for a through neck'),
  ...mm('neck.needs.', {
    total: 'Length that the blank must give.',
    headstock: 'Of this, the head.',
    scale: 'From the nut to the saddle line.',
    behindSaddle: 'From the saddle line to the outside of the tail-end wall, or to the end of the tongue.',
    tail: 'What stands out behind.',
  }),
  ...words('neck.', {
    trouble:
      '`nut on the box`, `no wood left` or `gives way` where a known pull gives no numbers; else null.',
  }),
  ...mm('neck.', {
    bow: 'Half way between nut and box, hollow positive; an estimate, or null until a tuning is stated.',
    nutRise: 'How far the pull lifts the nut: an upper bound, or null.',
    actionChange:
      'How much higher the strings stand over the octave under their pull: an upper bound, or null.',
    'weakest.fromNut': 'Where the neck is most strained. `weakest` is null until a tuning is stated.',
  }),
  ...words('neck.', { 'weakest.of': 'The stretch it lies in.' }),
  ...rows('N/mm²', 'neck.', { 'weakest.stress': 'Stress there, pressure positive.' }),
  ...rows('share', 'neck.', { 'weakest.share': 'Of what is borne there for good.' }),
  ...mm('board.', {
    x0: 'Head end of the board. `board` is null where none is fitted.',
    x1: 'Tail end of the board.',
    bottom: 'Its underside.',
    top: 'Its top.',
    overLid: 'How far it reaches over the box.',
    length: 'Length of the board.',
  }),
  ...mm('nut.', {
    x0: 'Back of the nut.',
    x1: 'Front edge of the nut.',
    bottom: 'Foot of the nut.',
    top: 'Underside of the strings.',
  }),
  ...mm('saddle.', {
    fromNut: 'From the nut to the saddle line.',
    fromEdge: 'From the lid’s neck-end edge to the saddle line.',
    fromTailEdge: 'From the saddle line to the lid’s tail-end edge.',
    fromTailWall: 'From the saddle line to the inside of the tail-end wall.',
    top: 'Underside of the strings.',
  }),
  ...mm('saddle.', {
    height: 'The same: height of the saddle over the lid, as drawn.',
    heightWanted: 'Height that gives the action wanted.',
    action: 'Strings over the crown of the octave fret (or a bare board), as drawn.',
    actionUnderPull: 'The same with the neck bent by the pull, or null.',
    setbackWanted: 'Setback of the line that suits all strings best, at the centreline, or null.',
  }),
  ...rows('radians', 'saddle.', {
    slantWanted: 'Slant of that line, treble side farther back positive, or null.',
  }),
  ...mm('saddle.', {
    freeFrom: 'From the nut: where a loose saddle may have to stand, the nearest.',
    freeTo: 'The same, the farthest.',
  }),
  ...rows('radians', 'saddle.', {
    breakAngle: 'The least bend of a string over the saddle, or null where none has a hole.',
  }),
  ...box4('saddle.foot.', 'Foot of the saddle, from the nut and the centreline'),
  ...rows('newtons', 'pull.', { total: 'All strings together, or null until a tuning is stated.' }),
  ...rows('newtons', 'pull.', { 'spread.mean': 'Mean pull of a string. `spread` is null with it.' }),
  ...rows('share', 'pull.', {
    'spread.least': 'Slackest string, of the mean.',
    'spread.most': 'Tightest string, of the mean.',
  }),
  ...words('pull.', {
    missing: 'Why nothing is known: `no tuning`, `tuning too short` or `a string cannot be made`; else null.',
  }),
  ...rows('newtons', 'lid.', { downForce: 'What the saddle presses with, or null.' }),
  ...mm('lid.', {
    sag: 'Of the lid under the saddle, with the brace stated; an estimate, or null.',
    sagWithoutBrace: 'The same without a brace, were the neck not under it.',
  }),
  ...yesNo('lid.', { onNeck: 'Does the lid lie on the neck under the saddle, or null?' }),
  ...words('chord.', {
    root: 'Root of the open chord. `chord` is null where the strings make none.',
    'strings[].ratio': 'Pure ratio of the string to the root.',
  }),
  ...rows('hertz', 'chord.', { 'strings[].hertz': 'Frequency tuned pure.' }),
  ...rows('cents', 'chord.', { 'strings[].offset': 'What a tuner then shows, over its tempered mark.' }),
  ...rows('per second', 'chord.', {
    'beats[]': 'Beats of each string with the next as stated, or null where no ear hears them.',
  }),
  ...BODY_KEYS,
  ...counts('tailHoles[].', { number: '1 on the bass side.' }),
  ...mm('tailHoles[].', {
    fromNut: 'From the nut.',
    fromEdge:
      'On the tail, from the box; on the wall, down from its lid-side edge; on the lid, from its tail-end edge.',
    fromCentreline: 'From the centreline.',
    z: 'Height.',
  }),
  ...counts('tailHoles[].', { string: 'Number of the string that runs to it, or null.' }),
  ...counts('posts[].', { number: 'Bass row first, nearest the nut first.' }),
  ...words('posts[].', { side: '`bass` or `treble`.' }),
  ...mm('posts[].', { fromNut: 'From the nut, negative.', fromCentreline: 'From the centreline.' }),
  ...HEAD_KEYS,
  ...words('things[].', {
    id: 'Its id.',
    kind: 'Its kind.',
    name: 'Its name, empty where it has none.',
    what: 'Kind and shape in words.',
    face: 'The face it is on.',
  }),
  ...mm('things[].', {
    fromNut: 'From the nut to its centre; on an end wall, to that wall.',
    fromEdge: 'From the face’s neck-end edge to its centre; on an end wall, from the bass edge.',
    fromCentreline:
      'From the face’s centreline to its centre: treble positive; on a side wall, tail positive.',
    fromLidEdge: 'On a wall, down from the lid-side edge; null on lid and base.',
  }),
  ...rows('radians', 'things[].', { turned: 'Turned about its centre, from the tail towards the treble.' }),
  ...mm('things[].', {
    'size.along': 'Size along the face.',
    'size.across': 'Size across the face.',
  }),
  ...box4('things[].bounds.', 'Room it takes on its face, from the panel’s origin'),
  ...mm('things[].', { reach: 'How far it reaches behind the outer side of the face.' }),
  ...words('parts[].', {
    id: 'Name of the part, as in `--part` and in file names.',
    title: 'Title on its sheet.',
    seen: 'From where the sheet looks at it.',
  }),
  ...yesNo('parts[].', { mirrored: 'Is the sheet the mirror image of what that face shows?' }),
  ...words('parts[].', { headEnd: 'Where the head lies on the sheet.' }),
  ...mm('parts[].', { thickness: 'Thickness of the wood.' }),
  ...box4('parts[].bounds.', 'Outline, on its own sheet'),
  ...counts('parts[].operations.', {
    cut: 'How many cuts right through, the outline not counted.',
    recess: 'How many recesses.',
    drill: 'How many drilled holes.',
    slot: 'How many saw slots.',
    mark: 'How many scribed lines.',
    datum: 'How many lines to measure from.',
    note: 'How many notes.',
  }),
  ...SCHEDULE_KEYS,
  ...HEARING_KEYS,
  ...WIRING_KEYS,
  ...words('findings[].', {
    rule: 'Name of the rule.',
    key: 'Names this finding for good; what `overruled` in a design points at.',
    grade: '`stop`, `care`, `note` or `clear`.',
    'about[]': 'Ids of the things it is about, or names of structure.',
  }),
  ...rows('as `unit` says', 'findings[].', {
    measured: 'What was measured, or null.',
    limit: 'What it is held against, or null.',
    margin: 'How far it is on the good side of the limit; negative is bad; null where nothing was measured.',
  }),
  ...TOLERANCE_KEYS,
  ...words('findings[].', {
    unit: '`mm`, `degrees`, `share` or `count`.',
    sentence: 'The same in words, in the builder’s unit.',
    'where.view': '`plan` and `section` are the instrument; else a face, in its own frame.',
  }),
  ...mm('findings[].where.', {
    'from.x': 'Where the measured stretch begins, x.',
    'from.y': 'The same, y; in `section` the height.',
    'to.x': 'Where it ends, x.',
    'to.y': 'The same, y; in `section` the height.',
  }),
  ...words('findings[].', { overruled: 'The builder’s reason to live with it, or null.' }),
  ...yesNo('findings[].', { blocks: 'Is it a stop that nobody overruled?' }),
  ...words('problems[].', {
    of: 'Id of a thing whose place could not be followed.',
    axis: '`along` or `across`.',
    sentence: 'Why it could not.',
  }),
]
