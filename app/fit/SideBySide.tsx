/** Variants side by side: the numbers of each beside those of the design on the bench, and what differs. */
import { useMemo } from 'react'
import { type Design, fitOf, formatLength, type Numbers, ruleOf, solve } from '../../geometry/index.ts'
import { VARIANT_DASHES } from '../canvas/variants-paint.ts'
import { useDesign } from '../parts/calm.ts'
import { type Beside, compareMany } from '../parts/compare.ts'
import { letAllGo, letGo, useVariants, type Variant } from '../state/variants.ts'
import { SHOWN, sayPlace } from './say-row.ts'

type Units = Design['units']

/** What is shown before the numbers of a row. */
const STATED: readonly (readonly [head: string, say: (design: Design, units: Units) => string])[] = [
  ['Scale', ({ scale }, units) => formatLength(scale.length, units)],
  ['Strings', ({ strings }) => String(strings.count)],
  ['Saddle', (design) => sayPlace(shareOf(design))],
]

function shareOf(design: Design): number {
  const { saddle, panels } = solve(design)
  const { minX, maxX } = panels.lid.bounds
  return saddle.along / (maxX - minX)
}

export function SideBySide() {
  const held = useVariants((state) => state.held)
  const now = useDesign()
  const differing = useMemo(
    () =>
      compareMany(
        now,
        held.map((one) => one.design),
      ),
    [now, held],
  )
  const all = [now, ...held.map((one) => one.design)]
  return (
    <table className="fit-table beside-table">
      <caption className="unseen">The design on the bench and the variants held beside it</caption>
      <thead>
        <tr>
          <th scope="col" className="left">
            <button type="button" className="quiet" onClick={letAllGo}>
              Let all go
            </button>
          </th>
          <th scope="col">On the bench</th>
          {held.map((variant) => (
            <VariantHead key={variant.number} variant={variant} />
          ))}
        </tr>
      </thead>
      <tbody>
        {STATED.map(([head, say]) => (
          <tr key={head}>
            <th scope="row" className="left">
              {head}
            </th>
            {all.map((design, index) => (
              <td key={index === 0 ? 0 : held[index - 1]?.number}>{say(design, now.units)}</td>
            ))}
          </tr>
        ))}
        {SHOWN.map(({ name, head, help, say }) => (
          <tr key={name}>
            <th scope="row" className="left" title={help}>
              {head}
            </th>
            {all.map((design, index) => (
              <td key={index === 0 ? 0 : held[index - 1]?.number}>
                {said(design, say, now.units, name === 'margin')}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
      {differing.length > 0 && <Differing lines={differing} held={held} />}
    </table>
  )
}

/** Its number, the sort of line it is drawn in, and its name. */
function VariantHead({ variant: { number, name } }: { readonly variant: Variant }) {
  return (
    <th scope="col">
      <svg className="variant-line" viewBox="0 0 60 8" aria-hidden="true">
        <line x1="0" y1="4" x2="60" y2="4" strokeDasharray={VARIANT_DASHES[number]?.join(' ')} />
      </svg>{' '}
      <b>{number}</b> {name}{' '}
      <button
        type="button"
        className="quiet"
        aria-label={`Let ${number}, ${name}, go`}
        onClick={() => letGo(number)}
      >
        Let go
      </button>
    </th>
  )
}

/** One number of a design; of one that cannot be built the rule that forbids it, once. */
function said(
  design: Design,
  say: (numbers: Numbers, units: Units) => string,
  units: Units,
  last: boolean,
): string {
  const { numbers, impossible } = fitOf(design)
  if (numbers) return say(numbers, units)
  return last && impossible ? `cannot be built: ${ruleOf(impossible).title.toLowerCase()}` : '–'
}

function Differing({
  lines,
  held,
}: {
  readonly lines: readonly Beside[]
  readonly held: readonly Variant[]
}) {
  let heading = ''
  return (
    <tbody>
      {lines.map((line) => {
        const under = line.under === heading ? null : line.under
        heading = line.under
        return [
          under && (
            <tr key={`under ${under}`} className="compare-under">
              <th scope="colgroup" colSpan={2 + held.length} className="left">
                {under}
              </th>
            </tr>
          ),
          <tr key={`${line.under} ${line.what}`}>
            <th scope="row" className="left">
              {line.what}
            </th>
            <td>{line.now}</td>
            {line.others.map((other, index) => (
              <td key={held[index]?.number} className={other === null ? 'soft' : undefined}>
                {other ?? 'the same'}
              </td>
            ))}
          </tr>,
        ]
      })}
    </tbody>
  )
}
