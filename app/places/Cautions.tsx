/** What can hurt, said once, where the cutting begins. */

const CAUTIONS: readonly string[] = [
  'Measure the 100 mm bar on every print or test cut before you trust it.',
  'Cut a scrap first; a wrong hole cannot be taken back.',
  'Saw, router and drill: clamp the work, keep hands behind the edge, take off gloves and loose sleeves.',
  'Wear a dust mask: oak, cedar and tropical woods harm the lungs, and an old finish may hold lead, which is not to be sanded dry.',
  'Never laser vinyl, PVC or a plastic you do not know: they give off chlorine.',
  'A string under tension can break: protect your eyes when you bring one to pitch, above all the first time.',
]

export function Cautions() {
  return (
    <section className="cautions" aria-label="Before you cut">
      <h2>Before you cut</h2>
      <ul>
        {CAUTIONS.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </section>
  )
}
