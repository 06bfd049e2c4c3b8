// What the app asks of the host about the phone door: how it stands, open it, a new code, end a phone, close it.
// Each is answered with how it then stands.
import { z } from 'zod';
import { code, instant } from '../procedures/shapes.ts';

/** Always the same unless another is asked for: what a phone keeps unsent belongs to the address with its port. */
export const usualPhonePort = 26_026;

const leastPort = 1024;

const phoneSession = z.strictObject({
  id: z.string(),
  /** As entered on the phone. */
  name: z.string(),
  since: instant,
  lastSeen: instant,
  entries: z.int(),
  lines: z.int(),
});

const phoneCode = z.discriminatedUnion('state', [
  z.strictObject({
    state: z.literal('open'),
    digits: z.string(),
    secondsLeft: z.int(),
    wrongTries: z.int(),
  }),
  z.strictObject({ state: z.enum(['used', 'expired', 'closed']) }),
]);

export const phoneState = z.strictObject({
  /** Of this machine; one of them is chosen. */
  addresses: z.array(
    z.strictObject({
      address: z.string(),
      name: z.string(),
      reach: z.enum(['this-machine', 'private', 'self-given', 'public']),
    }),
  ),
  usualPort: z.int(),
  /** Null while it is closed. */
  door: z
    .strictObject({
      url: z.string(),
      address: z.string(),
      port: z.int(),
      job: code,
      openedAt: instant,
      code: phoneCode,
      sessions: z.array(phoneSession),
    })
    .nullable(),
});
export type PhoneState = z.output<typeof phoneState>;

export const phoneCalls = {
  'phone.state': { input: z.strictObject({}), output: phoneState },
  /** Begins with a first code. */
  'phone.open': {
    input: z.strictObject({
      address: z.ipv4(),
      job: code,
      /** 0 takes any free port; absent: the usual one. Those below are for programs of the system. */
      port: z.union([z.literal(0), z.int().min(leastPort).max(65_535)]).optional(),
    }),
    output: phoneState,
  },
  /** A new code in place of the one that was open. */
  'phone.code': { input: z.strictObject({}), output: phoneState },
  'phone.end': { input: z.strictObject({ session: z.string().max(80) }), output: phoneState },
  'phone.close': { input: z.strictObject({}), output: phoneState },
} as const;

export type PhoneCallName = keyof typeof phoneCalls;
