import { spawnSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { resolve } from 'node:path'

/** The folder the project lies in. */
export const project = resolve(import.meta.dirname, '../..')

/**
 * The project's files, as paths from its top: what git has or would take; without git, whatever lies there
 * and is not ignored by name.
 */
export function projectFiles(): string[] {
  const git = spawnSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', '-z'], {
    cwd: project,
    encoding: 'utf8',
    maxBuffer: 1 << 26,
  })
  const top = spawnSync('git', ['rev-parse', '--show-cdup'], { cwd: project, encoding: 'utf8' })
  // Lying as a plain copy inside somebody else's repository is the same as lying outside of one.
  const own = git.status === 0 && top.stdout.trim() === ''
  const files = own ? git.stdout.split('\0').filter((file) => file !== '') : withoutGit()
  return [...new Set(files)].filter((file) => existsSync(resolve(project, file))).sort()
}

function withoutGit(): string[] {
  const ignored = readFileSync(resolve(project, '.gitignore'), 'utf8')
    .split('\n')
    .filter((line) => line.endsWith('/'))
    .map((line) => line.slice(0, -1))
  const files: string[] = []
  const list = (folder: string) => {
    for (const entry of readdirSync(resolve(project, folder), { withFileTypes: true })) {
      if (entry.name === '.git' || ignored.includes(entry.name)) continue
      const path = folder === '' ? entry.name : `${folder}/${entry.name}`
      if (entry.isDirectory()) list(path)
      else files.push(path)
    }
  }
  list('')
  return files
}
