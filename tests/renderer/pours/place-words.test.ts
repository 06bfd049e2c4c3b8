import { expect, test } from 'vitest';
import { timeWords } from '../../../renderer/parts/time-words.ts';
import { notBeforeWords } from '../../../renderer/screens/pours/place-words.ts';

const words = timeWords('America/New_York');

test('why a placed pour does not stand a day sooner, in one sentence each', () => {
  expect(notBeforeWords({ kind: 'crew', date: '2026-04-09' }, words)).toBe(
    'The crew has no hours left on Thu 9 Apr.',
  );
  const short = { kind: 'component', component: 'P424', missing: 6, date: '2026-04-17' } as const;
  expect(notBeforeWords(short, words)).toBe('6 P424 are wanting on Fri 17 Apr.');
  const after = { kind: 'after', pour: 'P25', until: '2026-04-20T14:00:00-04:00' } as const;
  expect(notBeforeWords(after, words)).toContain('P25, Mon 20 Apr 14:00');
});
