import { spawnSync } from 'node:child_process'

/**
 * Installs Debian packages, where apt-get exists and we are root.
 * @returns true when apt-get installed them; false when it cannot or did not
 */
export function aptInstall(...packages: string[]): boolean {
  if (process.platform !== 'linux' || process.getuid?.() !== 0) return false
  const apt = (...words: string[]) =>
    spawnSync('apt-get', words, {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    }).status === 0
  if (spawnSync('apt-get', ['--version']).status !== 0) return false
  console.log(`Installing ${packages.join(', ')} with apt-get.`)
  // An index that is a little old still does, so a failed update is not the end.
  apt('update')
  return apt('install', '-y', '--no-install-recommends', ...packages)
}
