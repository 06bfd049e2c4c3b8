import { spawn } from 'node:child_process';
import process from 'node:process';
import { describe, expect, test } from 'vitest';
import { calculateLines } from '../../core/cli/calculate.ts';
import { calcLength } from '../../core/procedures/calc-length.ts';
import { cli, run } from './run-cli.ts';

describe('calc', () => {
  test('a length typed with feet and inches is 3822700000 nanometres, exit 0, nothing on standard error', async () => {
    const ran = await run(['calc', 'length'], '{"text":"12\'-6 1/2\\""}');
    expect(ran).toMatchObject({ code: 0, stderr: '' });
    expect(ran.document()).toEqual({
      nanometres: 3_822_700_000,
      mm: 3822.7,
      us: '12\'-6 1/2"',
      metric: '3822.7 mm',
    });
  });

  const refusals: readonly (readonly [
    what: string,
    args: readonly string[],
    input: string,
    code: string,
    field?: string,
  ])[] = [
    ['a length without a unit', ['calc', 'length'], '{"text":"12"}', 'length-without-unit', 'text'],
    ['a field that is missing', ['calc', 'length'], '{}', 'bad-input', 'text'],
    ['an unknown key', ['calc', 'length'], '{"text":"8 ft","more":1}', 'bad-input'],
    ['broken JSON', ['calc', 'length'], '{"text":', 'bad-json'],
    ['nothing at all', ['calc', 'length'], '', 'bad-json'],
    ['a key that would be lost', ['calc', 'takeoff'], '{"panels":{"__proto__":1}}', 'bad-json'],
    ['two documents', ['calc', 'length'], '{"text":"8 ft"}{"text":"8 ft"}', 'bad-json'],
    ['a list', ['calc', 'length'], '[]', 'bad-input'],
    ['an unknown calculation', ['calc', 'lengths'], '{}', 'unknown-command'],
    ['a name of every object', ['calc', 'constructor'], '{}', 'unknown-command'],
    ['no calculation', ['calc'], '{}', 'unknown-command'],
    ['an option of another command', ['calc', 'length', '--book', 'b'], '{"text":"8 ft"}', 'bad-option'],
    ['an unknown option', ['calc', 'length', '--line'], '{"text":"8 ft"}', 'bad-option'],
    ['a word too many', ['calc', 'length', 'x'], '{"text":"8 ft"}', 'bad-option'],
    ['no command', [], '', 'unknown-command'],
    ['an unknown command', ['plans'], '', 'unknown-command'],
  ];
  for (const [what, args, input, code, field] of refusals)
    test(`${what} is refused as ${code} with exit 2`, async () => {
      const ran = await run(args, input);
      expect(ran.code).toBe(2);
      const { error } = ran.document() as { error: { code: string; message: string; field?: string } };
      expect(error.code).toBe(code);
      expect(error.message).not.toBe('');
      if (field !== undefined) expect(error.field).toBe(field);
    });

  test('a byte order mark before the document is no part of it', async () => {
    expect((await run(['calc', 'length'], '\uFEFF{"text":"8 ft"}')).code).toBe(0);
  });

  test('takeoff and plan answer too', async () => {
    const system = {
      panels: [{ code: 'A', width: '3 ft', height: '9 ft', weightKg: 90 }],
      components: [],
      rules: {},
    };
    const takeoff = await run(['calc', 'takeoff'], JSON.stringify({ system, panels: { A: 2 } }));
    expect(takeoff.document()).toMatchObject({ estimate: true });
    const plan = await run(['calc', 'plan'], JSON.stringify(smallPlan));
    expect(plan.document()).toMatchObject({
      runs: [{ turns: ['t1'] }],
      cost: { labour: 30_000, hire: 0, total: 30_000 },
    });
    expect([takeoff.code, plan.code]).toEqual([0, 0]);
  });

  test('fill answers proposals with exit 0, and a negative filler is refused with exit 2', async () => {
    const system = { panels: [{ code: 'A', width: '3 ft', height: '9 ft', weightKg: 90 }] };
    const face = { length: '6 ft', height: '9 ft' };
    const filled = await run(['calc', 'fill'], JSON.stringify({ system, face, maximumFiller: 0 }));
    expect(filled).toMatchObject({ code: 0, stderr: '' });
    const places = [{ panel: 'A', x: 0, y: 0, onSide: false }, { panel: 'A', x: 914.4, y: 0, onSide: false }]; // prettier-ignore
    expect(filled.document()).toEqual({
      proposals: [
        { design: { panels: places, fillers: [] }, fillerMm: 0, panelCount: 2, short: {}, score: [0, 0, 2] },
      ],
      proven: true,
      findings: [],
    });
    const refused = await run(['calc', 'fill'], JSON.stringify({ system, face, maximumFiller: -1 }));
    expect(refused.code).toBe(2);
    expect(refused.document()).toMatchObject({ error: { code: 'length-negative', field: 'maximumFiller' } });
  });
});

/** Assembled in 4 h and broken down in 2 h at 50.00 an hour: 300.00. */
const smallPlan = {
  components: [{ code: 'P', stock: 2, hirePerDay: 100 }],
  designs: [{ code: 'G', pieces: { P: 2 }, assembleH: 4, breakDownH: 2 }],
  turns: [{ id: 't1', design: 'G', from: '2026-03-02T07:00:00-05:00', to: '2026-03-04T15:00:00-05:00' }],
  turnaround: { flyOnH: 1, regangBaseH: 1, regangPerPieceH: 0.1 },
  labourPerH: 5000,
};

describe('calc --lines', () => {
  test('every line is answered in order, a refused one by its error, and the exit is 0', async () => {
    const lines = ['{"text":"8 ft"}', 'not json', '{"text":"x"}', '{"other":1}', '{"text":"2.7 m"}'];
    const ran = await run(['calc', 'length', '--lines'], `${lines.join('\n')}\n`);
    expect(ran.code).toBe(0);
    const answers = ran.stdout
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(answers.map((each) => each['metric'] ?? (each['error'] as { code: string }).code)).toEqual([
      '2438.4 mm',
      'bad-json',
      'length-unreadable',
      'bad-input',
      '2700 mm',
    ]);
  });

  test('line ends of other systems, a missing last one and separators inside a text do not part documents', async () => {
    const ran = await run(
      ['calc', 'length', '--lines'],
      '{"text":"8 ft"}\r\n{"text":"\u2028"}\n{"text":"9 ft"}',
    );
    expect(ran.stdout.trimEnd().split('\n')).toHaveLength(3);
  });

  test('no line at all is answered by none', async () => {
    expect(await run(['calc', 'length', '--lines'], '')).toMatchObject({ code: 0, stdout: '' });
  });

  test('20 000 lines are all answered, whole to the last', async () => {
    const ran = await run(['calc', 'length', '--lines'], '{"text":"8 ft"}\n'.repeat(20_000));
    const answers = ran.stdout.split('\n');
    expect(answers).toHaveLength(20_001);
    expect(JSON.parse(answers[19_999]!)).toMatchObject({ mm: 2438.4 });
  });

  test('lines that come byte by byte, prime and all, are answered as if they had come at once', async () => {
    const bytes = new TextEncoder().encode('{"text":"12\u20326"}\n\n{"text":"2.7 m"}');
    const answers: string[] = [];
    const code = await calculateLines(
      calcLength,
      (async function* (): AsyncGenerator<Uint8Array> {
        for (const byte of bytes) yield Uint8Array.of(byte);
      })(),
      async (line) => void answers.push(line),
    );
    expect(code).toBe(0);
    expect(answers.map((line) => JSON.parse(line) as unknown)).toMatchObject([{ mm: 3810 }, { mm: 2700 }]);
  });

  test('a line is answered before the next is written', async () => {
    const child = spawn(process.execPath, [cli, 'calc', 'length', '--lines'], {
      stdio: ['pipe', 'pipe', 'inherit'],
    });
    const next = (): Promise<string> =>
      new Promise((resolve) => child.stdout.once('data', (chunk: Buffer) => resolve(chunk.toString())));
    child.stdin.write('{"text":"8 ft"}\n');
    expect(await next()).toContain('2438.4');
    child.stdin.write('{"text":"9 ft"}\n');
    expect(await next()).toContain('2743.2');
    child.stdin.end();
    expect(await new Promise((resolve) => child.once('close', resolve))).toBe(0);
  });

  test('a reader that closes the pipe early ends the program without a complaint', async () => {
    const child = spawn(process.execPath, [cli, 'calc', 'length', '--lines'], {
      stdio: ['pipe', 'pipe', 'pipe'],
    });
    let complaint = '';
    child.stderr.on('data', (chunk: Buffer) => (complaint += chunk.toString()));
    child.stdin.on('error', () => undefined);
    child.stdin.write('{"text":"8 ft"}\n'.repeat(50_000));
    child.stdout.once('data', () => child.stdout.destroy());
    child.stdin.end();
    expect(await new Promise((resolve) => child.once('close', resolve))).toBe(0);
    expect(complaint).toBe('');
  });
});

describe('schema', () => {
  for (const command of [
    ['calc', 'length'],
    ['calc', 'takeoff'],
    ['calc', 'pick'],
    ['calc', 'fill'],
    ['calc', 'plan'],
    ['demo'],
    ['import'],
    ['plan'],
    ['whatif'],
    ['stock'],
    ['check'],
  ])
    test(`of ${command.join(' ')} is JSON Schema for input and output, both of objects`, async () => {
      const ran = await run(['schema', ...command]);
      expect(ran.code).toBe(0);
      const { input, output } = ran.document() as {
        input: Record<string, unknown>;
        output: Record<string, unknown>;
      };
      for (const shape of [input, output]) {
        expect(shape['$schema']).toContain('json-schema.org');
        expect(shape['type'] ?? shape['anyOf'] ?? shape['oneOf']).toBeDefined();
      }
      expect(JSON.stringify(input).length).toBeGreaterThan(100);
    });

  test('of a command that is not there is refused with exit 2', async () => {
    expect((await run(['schema', 'calc', 'nothing'])).code).toBe(2);
    expect((await run(['schema'])).code).toBe(2);
  });
});
