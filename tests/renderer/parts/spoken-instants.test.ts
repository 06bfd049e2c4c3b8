import { describe, expect, test } from 'vitest';
import { withSpokenInstants } from '../../../renderer/parts/spoken-instants.ts';

describe('Instants in a sentence of the core', () => {
  test('are said by the clock of the job where its zone is known: 12:00 UTC is 08:00 in New York', () => {
    expect(withSpokenInstants('not before 2026-03-11T12:00:00Z.', 'America/New_York')).toBe(
      'not before Wed 11 Mar 08:00.',
    );
  });

  test('are said by the clock they are written with where it is not known', () => {
    expect(withSpokenInstants('from 2026-03-11T07:00:00-04:00 to 2026-03-12T15:30-04:00')).toBe(
      'from Wed 11 Mar 07:00 to Thu 12 Mar 15:30',
    );
  });

  test('and one in UTC says that it is', () => {
    expect(withSpokenInstants('at 2026-03-11T07:00:00.000Z')).toBe('at Wed 11 Mar 07:00 UTC');
  });
});
