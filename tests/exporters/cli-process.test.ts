/** The command as a real process: streams, exit codes and folders are those of the machine. */
import { spawnSync } from 'node:child_process'
import { resolve } from 'node:path'
import { describe, expect, test } from 'vitest'
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

describe.skipIf(process.platform !== 'linux')(
  'the exit code says what became of it',
  () => {
    /** A line of the shell: `$LIDWRIGHT` is the command, its code that of the whole. */
    function shell(bench: Bench, line: string) {
      const { status, stderr } = spawnSync('bash', ['-c', line], {
        cwd: bench.folder,
        encoding: 'utf8',
        env: {
          ...process.env,
          NODE_DISABLE_COMPILE_CACHE: '1',
          LIDWRIGHT: `${process.execPath} ${resolve(project, 'exporters/bin.cjs')}`,
        },
      })
      return { status, stderr }
    }
    const bench = () => {
      const made = new Bench()
      made.put('good.json', sound())
      made.put('bad.json', broken())
      return made
    }

    test.each([
      ['a stop is a stop', '$LIDWRIGHT check bad.json | true; exit $PIPESTATUS', 1],
      ['good is good', '$LIDWRIGHT report good.json | true; exit $PIPESTATUS', 0],
    ])('to a reader who leaves early %s', (_, line, status) => {
      expect(shell(bench(), line)).toEqual({ status, stderr: '' })
    })

    test('where the answer cannot be written', () => {
      const { status, stderr } = shell(bench(), '$LIDWRIGHT report good.json > /dev/full')
      expect(status).toBe(2)
      expect(stderr).toMatch(/^The answer could not be written: .*\n$/)
    })

    test('where what is wrong cannot be told', () => {
      expect(shell(bench(), '$LIDWRIGHT check gone.json 2> /dev/full').status).toBe(2)
    })

    test('where the folder it was started in is gone', () => {
      const { status, stderr } = shell(
        bench(),
        'mkdir d && cd d && rmdir ../d && $LIDWRIGHT check ../good.json',
      )
      expect({ status, stderr }).toEqual({
        status: 2,
        stderr: 'The folder this was started in is gone. Start it in another.\n',
      })
    })

    test('of a name as long as a disk takes', () => {
      const name = `${'n'.repeat(255 - '.lidwright.json'.length)}.lidwright.json`
      expect(shell(bench(), `$LIDWRIGHT new --hand right --out ${name}`)).toEqual({ status: 0, stderr: '' })
    })
  },
  120_000,
)
