/** The command as a real process: streams, exit codes and folders are those of the machine. */
import { spawnSync } from 'node:child_process'
import { resolve } from 'node:path'
import { expect, test } from 'vitest'
import { Bench, broken, sound } from '../support/commandLine.ts'
import { project } from '../support/project-files.ts'

function lidwright(bench: Bench, ...words: string[]) {
  const command = [resolve(project, 'exporters/bin.cjs'), ...words]
  const { status, stdout, stderr } = spawnSync(process.execPath, command, {
    cwd: bench.folder,
    encoding: 'utf8',
    // A test leaves nothing with whoever runs it.
    env: { ...process.env, NODE_DISABLE_COMPILE_CACHE: '1' },
  })
  return { status, stdout, stderr }
}

test('answers on stdout, complains on stderr, and ends with the worst code', async () => {
  const bench = new Bench()
  bench.put('good.json', sound())
  bench.put('bad.json', broken())
  const both = lidwright(bench, 'check', 'good.json', 'bad.json')
  expect(both).toEqual({
    status: 1,
    stdout: (await bench.run('check', 'good.json', 'bad.json')).out,
    stderr: '',
  })
  const gone = lidwright(bench, 'check', 'gone.json', '--json')
  expect(gone).toMatchObject({ status: 2, stdout: '' })
  expect(gone.stderr).toContain('gone.json: it cannot be read')
}, 60_000)

test('writes into the folder it is started in, the same bytes every time', async () => {
  const bench = new Bench()
  bench.put('box.json', sound())
  expect(lidwright(bench, 'templates', 'box.json', '--out', 'a', '--part', 'lid,board')).toMatchObject({
    status: 0,
    stderr: '',
  })
  await bench.run('templates', 'box.json', '--out', 'b', '--part', 'lid,board')
  const names = bench.files('a').map((name) => name.slice(2))
  expect(names).toHaveLength(6)
  for (const name of names) expect(bench.read(`a/${name}`), name).toBe(bench.read(`b/${name}`))
}, 60_000)
