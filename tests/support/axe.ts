import AxeBuilder from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { pageRests } from './bench-page.ts'

/** The rules of axe whose answer hangs on colours; the others say the same in both schemes. */
const OF_COLOURS = ['color-contrast', 'link-in-text-block']

/** Where axe looks, and at what. */
export interface Look {
  /** `colours` where all the rules have looked before, in the other scheme; every rule unless stated. */
  readonly rules?: 'all' | 'colours'
  /** Selectors of what is looked at, and of what is not; the whole page unless stated. */
  readonly include?: string
  readonly exclude?: string
}

/**
 * What axe objects to on a page once it has come to rest, a line for each rule; empty where all is well.
 * @example expect(await violationsOf(page)).toEqual([])
 */
export async function violationsOf(
  page: Page,
  { rules = 'all', include, exclude }: Look = {},
): Promise<string[]> {
  await pageRests(page)
  // In the page itself, without a second page; and no list of all that is in order, which takes half of the time.
  let axe = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] })
  if (include !== undefined) axe = axe.include(include)
  if (exclude !== undefined) axe = axe.exclude(exclude)
  if (rules === 'colours') axe = axe.withRules(OF_COLOURS)
  const { violations } = await axe.analyze()
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)
}
