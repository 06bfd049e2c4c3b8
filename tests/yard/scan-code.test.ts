// What is written for a scanner is read back as it was, whatever letters a tag has and whatever the scanner puts around it.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readScanCode, scanCode, scanKinds, scannedInJob } from '../../core/yard/scan-code.ts';

describe('a scan code', () => {
  test('reads as RG, kind, job and code', () => {
    expect(scanCode({ kind: 'gang', job: 'TB26', code: 'GA-01' })).toBe('RG:G:TB26:GA-01');
    expect(scanCode({ kind: 'container', job: null, code: 'BIN 7' })).toBe('RG:C::BIN%207');
    expect(scanCode({ kind: 'location', job: 'TB26', code: 'TB26/P01' })).toBe('RG:L:TB26:TB26/P01');
    expect(scanCode({ kind: 'ticket', job: 'A:B', code: '5%' })).toBe('RG:S:A%3AB:5%25');
    expect(scanCode({ kind: 'component', job: null, code: 'Rück' })).toBe('RG:K::R%C3%BCck');
  });

  test('comes back whatever letters it has, and whatever a scanner puts around it', () => {
    const around = fc.constantFrom('', ' ', '\r', '\r\n', '\t', '  \n');
    const part = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(
        fc.constantFrom(...scanKinds),
        fc.option(part),
        part,
        around,
        around,
        fc.constantFrom('', ']Q1'),
        (kind, job, code, before, after, identifier) => {
          const text = scanCode({ kind, job, code });
          expect(text).toMatch(/^RG:[GCSNKL]:[A-Za-z0-9\-_./%]*:[A-Za-z0-9\-_./%]+$/u);
          expect(readScanCode(`${before}${identifier}${text}${after}`)).toEqual({
            ok: true,
            value: { kind, job, code },
          });
        },
      ),
      { numRuns: 2000 },
    );
  });

  test.each([
    ['', 'Nothing was read.'],
    [' \r', 'Nothing was read.'],
    ['GA-01', '“GA-01” is none of our tags, tickets or sheets.'],
    ['RG:X:TB26:GA', 'none of our tags'],
    ['RG:G:TB26:', 'none of our tags'],
    ['RG:G:TB26', 'none of our tags'],
    ['RG:G:TB26:GA:1', 'none of our tags'],
    ['RG:G:TB26:%E4', 'none of our tags'],
    ['RGöGöTB26öGA', 'none of our tags'],
    ['RG:G:TB26:Gß1', 'none of our tags'],
  ])('%j is refused with what was read', (text, message) => {
    const read = readScanCode(text);
    expect(read).toMatchObject({ ok: false, error: { code: 'not-a-scan-code' } });
    expect(read.ok ? '' : read.error.message).toContain(message);
    expect(read.ok ? '' : read.error.hint).toMatch(/^Maybe /u);
  });

  test('capital letters locked are said', () => {
    const read = readScanCode('rg:g:tb26:ga');
    expect(read.ok ? '' : read.error.hint).toContain('capital letters');
  });
});

describe('of which job', () => {
  const gang = { kind: 'gang', job: 'TB27', code: 'GA-01' } as const;

  test('another job is refused with both named; none and this one pass', () => {
    const refused = scannedInJob(gang, 'TB26');
    expect(refused.ok ? '' : refused.error.message).toBe(
      'This is a gang of job TB27, GA-01; here is job TB26.',
    );
    expect(scannedInJob(gang, 'TB27').ok).toBe(true);
    expect(scannedInJob({ ...gang, job: null }, 'TB26').ok).toBe(true);
  });
});
