/** `npm run font`: makes exporters/pdf/font/font-data.ts from the font that the package dejavu-fonts-ttf brings. */
import { writeFileSync } from 'node:fs'
import { fontModule } from './font.ts'

writeFileSync(new URL('../../exporters/pdf/font/font-data.ts', import.meta.url), fontModule())
