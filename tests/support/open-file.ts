import type { Page } from 'playwright-core'

/** A file as a page is handed it. */
export interface PageFile {
  readonly name: string
  readonly mimeType: string
  readonly buffer: Buffer
}

/**
 * Opens a file in the page by its menu, with the mouse: a press of the button is what a browser asks for before it
 * shows a choice of files.
 * @example
 * await openFile(page, { name: 'box.lidwright.json', mimeType: 'application/json', buffer })
 */
export async function openFile(page: Page, file: PageFile): Promise<void> {
  await page.getByRole('dialog').waitFor({ state: 'hidden' })
  await page.getByRole('button', { name: 'File', exact: true }).click()
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('menuitem', { name: /Open a file/ }).click(),
  ])
  await chooser.setFiles(file)
}
