// What is believed of a phone's clock, and how far an address of this machine reaches.
import { describe, expect, test } from 'vitest';
import { reachOf } from '../../core/host/network-addresses.ts';
import { countedMoment } from '../../core/host/phone-clock.ts';
import { at } from './a-host.ts';

describe('the clock of a phone', () => {
  test('counted ten minutes before it was sent is ten minutes before it arrived, whatever year the phone has', () => {
    const said = { at: '2019-01-01T00:00:00+00:00', sentAt: '2019-01-01T00:10:00+00:00' };
    expect(countedMoment(at, said)).toEqual({
      at: '2026-03-02T06:50:00-05:00',
      clockSaid: '2019-01-01T00:00',
    });
  });

  test('a clock that is right within two minutes is not mentioned', () => {
    const said = { at: '2026-03-02T06:50:00-05:00', sentAt: '2026-03-02T07:01:30-05:00' };
    expect(countedMoment(at, said)).toEqual({ at: '2026-03-02T06:48:30-05:00', clockSaid: null });
  });

  test('one that was set back in between, or a month forward, says nothing: the arrival stands', () => {
    for (const sentAt of ['2026-03-02T06:49:59-05:00', '2026-04-02T06:50:00-05:00'])
      expect(countedMoment(at, { at: '2026-03-02T06:50:00-05:00', sentAt })).toEqual({
        at,
        clockSaid: '2026-03-02T06:50',
      });
  });
});

// RFC 1122, RFC 1918 and RFC 3927 set these blocks aside.
test.each([
  ['127.0.0.1', 'this-machine'],
  ['10.0.0.5', 'private'],
  ['172.16.0.1', 'private'],
  ['172.31.255.254', 'private'],
  ['172.32.0.1', 'public'],
  ['192.168.1.20', 'private'],
  ['192.169.1.20', 'public'],
  ['169.254.10.1', 'self-given'],
  ['203.0.113.9', 'public'],
])('%s is %s', (address, reach) => {
  expect(reachOf(address)).toBe(reach);
});
