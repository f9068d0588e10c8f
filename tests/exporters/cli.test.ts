import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { describe, expect, test } from 'vitest'
import { PROGRAM_VERSION } from '../../exporters/cli/version.ts'
import { Bench, broken, risky, sound } from '../support/commandLine.ts'
import { project } from '../support/project-files.ts'

describe('help', () => {
  test('names every command, shows a first instrument and says what the exit codes mean', async () => {
    const { code, out, err } = await new Bench().run('--help')
    expect({ code, err }).toEqual({ code: 0, err: '' })
    for (const word of ['check', 'templates', 'sheet', 'report', 'new', 'lidwright new --length'])
      expect(out).toContain(word)
    expect(out).toMatch(/Exit codes: 0 fine; 1 a stop is open.*; 2 bad input/)
  })

  test.each(['check', 'templates', 'sheet', 'report', 'new'])(
    'of %s has examples and exit codes',
    async (command) => {
      const { code, out } = await new Bench().run(command, '--help')
      expect(code).toBe(0)
      expect(out).toMatch(new RegExp(`Examples:\n  lidwright ${command} `))
      expect(out).toContain('Exit codes:')
    },
  )

  test('the first instrument of the help works as it is written', async () => {
    const bench = new Bench()
    const { out } = await bench.run('--help')
    const lines = out.split('\n').filter((line) => line.startsWith('  lidwright '))
    expect(lines).toHaveLength(3)
    for (const line of lines)
      expect(await bench.run(...line.trim().split(' ').slice(1))).toMatchObject({ code: 0, err: '' })
    expect(bench.files('cut').length).toBeGreaterThan(10)
  })

  test('without a command is given on stderr, with the code of bad input', async () => {
    const { code, out, err } = await new Bench().run()
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toContain('Usage: lidwright')
  })
})

test('the version is that of the package', async () => {
  const { version } = JSON.parse(readFileSync(resolve(project, 'package.json'), 'utf8')) as {
    version: string
  }
  expect(PROGRAM_VERSION).toBe(version)
  expect(await new Bench().run('--version')).toEqual({ code: 0, out: `${version}\n`, err: '' })
})

describe('words that it does not know', () => {
  test.each([
    [['cheque', 'x'], /Unknown command 'cheque'/],
    [['check'], /Missing required argument 'file'/],
    [['check', 'x', '--jason'], /Unknown option '--jason'/],
    [['templates', 'x'], /--out/],
    [['new', 'stray'], /Too many arguments/],
  ])('%j is refused with a sentence and a way on', async (argv, sentence) => {
    const { code, out, err } = await new Bench().run(...argv)
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toMatch(sentence)
    expect(err).toContain('--help')
  })
})

describe('files that cannot be read', () => {
  test.each(['check', 'report'])(
    '%s names each, says why, and still answers for the others',
    async (command) => {
      const bench = new Bench()
      bench.put('good.lidwright.json', sound())
      bench.put('cut-off.lidwright.json', JSON.stringify(sound()).slice(0, 500))
      bench.put('newer.lidwright.json', JSON.stringify({ ...sound(), version: 99 }))
      bench.put('other.json', '{"format":"something else"}')
      const files = [
        'good.lidwright.json',
        'cut-off.lidwright.json',
        'newer.lidwright.json',
        'other.json',
        'gone.json',
      ]
      const { code, out, err } = await bench.run(command, ...files)
      expect(code).toBe(2)
      expect(out).toContain('Tea box')
      expect(err).toMatch(
        /^cut-off\.lidwright\.json: The file holds no design\. It may be cut off, .*not JSON text/m,
      )
      expect(err).toMatch(/^newer\.lidwright\.json: version: The file is of version 99; .*newer Lidwright/m)
      expect(err).toMatch(/^other\.json: format: .*Is it the right file/m)
      expect(err).toMatch(/^gone\.json: it cannot be read: there is no such file or folder\. Check the path/m)
    },
  )

  test('a folder without a design says how to make one', async () => {
    const bench = new Bench()
    bench.put('boxes/readme.txt', 'nothing here')
    const { code, err } = await bench.run('check', 'boxes')
    expect(code).toBe(2)
    expect(err).toMatch(/^boxes: this folder holds no design.*lidwright new/)
  })

  test('a field that is wrong is named with its value', async () => {
    const bench = new Bench()
    bench.put(
      'box.json',
      JSON.stringify({ format: 'lidwright', version: 1, box: { length: 'long', lenght: 3 } }),
    )
    const { err } = await bench.run('check', 'box.json')
    expect(err).toMatch(/^box\.json: box\.length: Read "long"; a number is wanted/m)
    expect(err).toMatch(/^box\.json: box\.lenght: There is no field/m)
  })
})

describe('folders', () => {
  const filled = () => {
    const bench = new Bench()
    bench.put('boxes/b.lidwright.json', broken())
    bench.put('boxes/a/c.lidwright.json', sound())
    bench.put('boxes/.old/d.lidwright.json', broken())
    bench.put('boxes/notes.json', '{}')
    return bench
  }

  test('are walked in order of name; hidden ones and other files are left out', async () => {
    const { out } = await filled().run('check', 'boxes', '--json')
    const answers = JSON.parse(out) as { file: string }[]
    expect(answers.map(({ file }) => file)).toEqual(['boxes/a/c.lidwright.json', 'boxes/b.lidwright.json'])
  })

  test('the worst of all decides the exit code', async () => {
    const bench = filled()
    expect((await bench.run('check', 'boxes/a')).code).toBe(0)
    expect((await bench.run('check', 'boxes')).code).toBe(1)
    expect((await bench.run('check', 'boxes', 'gone.json')).code).toBe(2)
  })

  test('a file named twice is read once', async () => {
    const { out } = await filled().run('check', 'boxes', 'boxes/b.lidwright.json', '--json')
    expect(JSON.parse(out)).toHaveLength(2)
  })
})

describe('check', () => {
  test('a sound design ends with 0, a risky one too, one that cannot be built with 1', async () => {
    const bench = new Bench()
    const ends: number[] = []
    for (const design of [sound(), risky(), broken()])
      ends.push((await bench.run('check', bench.put('box.json', design))).code)
    expect(ends).toEqual([0, 0, 1])
  })

  test('says the gravest first, each with what was measured, its limit and its margin', async () => {
    const bench = new Bench()
    const both = { ...broken(), saddle: risky().saddle }
    const { out } = await bench.run('check', bench.put('box.json', both))
    expect(out).toMatch(/^Tea box: \d+ stops?, \d+ cares?, \d+ notes?; \d+ measures hold\n/)
    expect(out.indexOf('STOP:')).toBeGreaterThan(0)
    expect(out.indexOf('CARE:')).toBeGreaterThan(out.indexOf('STOP:'))
    expect(out.indexOf('NOTE:')).toBeGreaterThan(out.indexOf('CARE:'))
    // By hand: 0.9 of 240 mm is 216; the inside of the wall is at 234; 18 less half a 5 mm foot is 15.5 mm.
    expect(out).toMatch(
      /measured 15\.5 mm, at least 30\.0 mm, margin −14\.5 mm, give or take 0\.\d mm\n {4}\[saddle-to-tail-wall saddle\]/,
    )
    expect(out).not.toContain('CLEAR')
  })

  test('--all adds what holds', async () => {
    const bench = new Bench()
    const { out } = await bench.run('check', bench.put('box.json', sound()), '--all')
    expect(out).toContain('CLEAR: holds')
    expect(out).toContain('[strings-apart-at-nut nut]')
  })

  test('speaks the unit of the design', async () => {
    const bench = new Bench()
    const inches = { ...risky(), units: { display: 'inches', fraction: 16 } as const }
    const { out } = await bench.run('check', bench.put('box.json', inches))
    expect(out).toMatch(/measured 5\/8 in, at least 1 3\/16 in, margin −9\/16 in/)
  })

  test('a stop that was overruled no longer ends with 1, and its reason is told', async () => {
    const bench = new Bench()
    const overruled = { 'neck-left neck': 'steel rod inside' }
    const { code, out } = await bench.run('check', bench.put('box.json', { ...broken(), overruled }))
    expect(code).toBe(0)
    expect(out).toMatch(/^Tea box: 1 stop \(1 overruled\)/)
    expect(out).toContain('overruled: steel rod inside')
  })

  test('--json gives one object for one file, with findings that hold only on demand', async () => {
    const bench = new Bench()
    const file = bench.put('box.json', broken())
    const answer = JSON.parse((await bench.run('check', file, '--json')).out) as {
      file: string
      blocked: boolean
      findings: { grade: string; rule: string; margin: number }[]
    }
    expect(answer).toMatchObject({ file: 'box.json', blocked: true })
    expect(answer.findings[0]).toMatchObject({ grade: 'stop', rule: 'neck-left' })
    expect(answer.findings.some(({ grade }) => grade === 'clear')).toBe(false)
    const all = JSON.parse((await bench.run('check', file, '--json', '--all')).out) as typeof answer
    expect(all.findings.some(({ grade }) => grade === 'clear')).toBe(true)
  })

  test('heads each answer with its file when there are several', async () => {
    const bench = new Bench()
    const { out } = await bench.run('check', bench.put('a.json', sound()), bench.put('b.json', risky()))
    expect(out).toMatch(/^a\.json\nTea box: /)
    expect(out).toMatch(/\n\nb\.json\nTea box: /)
  })
})

describe('report', () => {
  test('as JSON is the report of the design, with the file in front', async () => {
    const bench = new Bench()
    const { code, out } = await bench.run('report', bench.put('box.json', broken()), '--json')
    const report = JSON.parse(out) as { file: string; frets: { fromNut: number }[] }
    expect(code).toBe(0)
    expect(report.file).toBe('box.json')
    expect(report.frets[11]?.fromNut).toBe(317.5)
  })

  test('as text has frets on the builder’s rule and every thing with its three distances', async () => {
    const bench = new Bench()
    const design = { ...sound(), units: { display: 'inches', fraction: 32 } as const }
    const { out } = await bench.run('report', bench.put('box.json', design))
    expect(out).toMatch(/^Tea box: right-handed, lengths in inches\n/)
    expect(out).toMatch(/^ +12 +12 1\/2 in +\+0\.00 /m)
    expect(out).toMatch(
      /^ +(?:Treble hole|hole-treble) +Sound hole, round +lid(?: {2,}(?:\d+ )?\d+(?:\/\d+)?){3}/m,
    )
    expect(out).toContain('Drilling strip for the strings')
  })

  test('as text has a table of the strings’ pull, or says why it has none', async () => {
    const bench = new Bench()
    const { out } = await bench.run('report', bench.put('box.json', sound()))
    expect(out).toMatch(/^ +3 +G2 +\d+\.\d N +\d+% +comfortable +\d\.\d\d /m)
    expect(out).toMatch(/All strings pull +\d+ N/)
    const without = await bench.run('report', bench.put('other.json', broken()))
    expect(without.out).toContain('No tuning is stated, so nothing is reckoned.')
  })

  test('of a folder is a list', async () => {
    const bench = new Bench()
    bench.put('boxes/a.lidwright.json', sound())
    expect(JSON.parse((await bench.run('report', 'boxes', '--json')).out)).toHaveLength(1)
  })
})
