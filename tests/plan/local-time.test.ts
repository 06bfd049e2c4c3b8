import { Temporal } from 'temporal-polyfill';
import { expect, test } from 'vitest';
import { instantText, localDate, msOf } from '../../core/plan/local-time.ts';

const hourMs = 3_600_000;

test('the text of an instant is the one that Temporal writes, in every hour of a year, over both clock changes', () => {
  const zones = ['America/New_York', 'Europe/Paris', 'Asia/Kolkata', 'Australia/Lord_Howe', 'UTC'];
  const start = msOf('2026-01-01T00:30:00Z');
  let looked = 0;
  for (const zone of zones)
    for (let ms = start; ms < start + 365 * 24 * hourMs; ms += 7 * hourMs + 1000) {
      const temporal = Temporal.Instant.fromEpochMilliseconds(ms).toZonedDateTimeISO(zone);
      expect(instantText(ms, zone)).toBe(temporal.toString({ timeZoneName: 'never' }));
      expect(localDate(ms, zone)).toBe(temporal.toPlainDate().toString());
      looked += 1;
    }
  expect(looked).toBeGreaterThan(6000);
});

test('parts of a second are kept', () => {
  expect(instantText(msOf('2026-03-02T12:00:00.250Z'), 'America/New_York')).toBe(
    '2026-03-02T07:00:00.250-05:00',
  );
});
