/** Sizes of usual tuners, to start from until one's own are measured. */
import { change, TUNER_PRESETS } from '../../geometry/index.ts'
import { commit } from '../state/index.ts'
import { useDesign } from './calm.ts'
import { Menu } from './Menu.tsx'

export function TypicalTuners() {
  const design = useDesign()
  return (
    <p className="soft small">
      <Menu
        label="Typical tuners…"
        className="quiet"
        items={TUNER_PRESETS.map(({ title, fields }) => ({
          title,
          under: 'Common practice: measure yours',
          run: () => {
            const sizes = Object.entries(fields).map(([name, value]) => [['headstock', name], value] as const)
            commit(`Tuners: ${title}`, change(design, ...sizes))
          },
        }))}
      />
    </p>
  )
}
