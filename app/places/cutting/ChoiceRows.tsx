/** How the parts come, what the lines mean, and what the files are for. */
import { ChoiceField } from '../../parts/ChoiceField.tsx'
import { useDesign } from '../../parts/calm.ts'
import { ACCEPTED } from '../../parts/field.ts'
import type { Format } from '../templates.ts'
import { type Choices, COME, LINES, lettersFor } from './choices.ts'

const PURPOSES: readonly Choices['purpose'][] = ['print', 'laser', 'plotter']

export interface ChoiceRowsProps {
  readonly choices: Choices
  readonly format: Format | 'both'
  readonly onChange: (next: Choices) => void
}

export function ChoiceRows({ choices, format, onChange }: ChoiceRowsProps) {
  const { process } = useDesign().cutting
  const take = (change: (option: string) => Partial<Choices>) => (option: string) => {
    onChange({ ...choices, ...change(option) })
    return ACCEPTED
  }
  return (
    <>
      {format !== 'dxf' && (
        <>
          <ChoiceField
            label="SVG for"
            help="Print: line types, legend and title block. Laser: only what the beam follows or scribes. Plotter: three pens, every line drawn through."
            value={choices.purpose}
            options={PURPOSES}
            onCommit={take((option) => {
              const purpose = option as Choices['purpose']
              return { purpose, letters: lettersFor(purpose) }
            })}
          />
          <ChoiceField
            label="Words in the SVG"
            help="As text, which needs a font where it is opened, or drawn with single lines, which a pen can follow."
            value={choices.letters}
            options={['text', 'single lines']}
            onCommit={take((option) => ({ letters: option as Choices['letters'] }))}
          />
        </>
      )}
      {format !== 'svg' && (
        <ChoiceField
          label="Release of the DXF"
          help="2000 suits every program of today; 12 is for old machines."
          value={choices.release}
          options={['2000', '12']}
          onCommit={take((option) => ({ release: option as Choices['release'] }))}
        />
      )}
      <ChoiceField
        label="The parts come"
        value={choices.come}
        options={COME}
        onCommit={take((option) => ({ come: option as Choices['come'] }))}
      />
      {process !== 'by hand' && (
        <ChoiceField
          label="Lines are"
          help="Paths moved by half of what the tool takes away, or the parts as they come out."
          value={choices.lines}
          options={LINES}
          onCommit={take((option) => ({ lines: option as Choices['lines'] }))}
        />
      )}
    </>
  )
}
