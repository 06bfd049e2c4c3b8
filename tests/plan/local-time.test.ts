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

test('an instant is read as Temporal reads it, however it is written', () => {
  const texts = [
    '2026-03-02T12:00:00Z',
    '2026-03-02T12:00Z',
    '2026-03-02T12:00:59.999+05:30',
    '2026-03-08T01:59:59-05:00',
    '2026-03-08T00:00:00+14:00',
    '1969-12-31T23:59:59-09:30',
    '0001-01-01T00:00:00Z',
    '9999-12-31T23:59:59.001-23:59',
    '2024-02-29T00:00:00-00:30',
    // Written less usually: more digits, no colon, a leap second, small letters, an hour alone.
    '2026-03-02T12:00:00.1234567Z',
    '2026-03-02T12:00:00.5Z',
    '20260302T120000Z',
    '2026-06-30T23:59:60Z',
    '2026-03-02t12:00:00z',
    '2026-03-02T12:00:00+05',
    '2026-03-02T12:00:00+0530',
  ];
  for (const text of texts)
    expect([text, msOf(text)]).toEqual([text, Temporal.Instant.from(text).epochMilliseconds]);
  for (const text of ['2026-02-30T12:00:00Z', '2026-03-02T24:30:00Z', '2026-03-02T12:00:00', 'soon'])
    expect(() => msOf(text), text).toThrow(RangeError);
});
