// Hours of a crane that other trades have or the wind takes, and hours it works for the forms besides its usual ones.
import { z } from 'zod';

export const craneBooking = z.strictObject({
  crane: z.string().trim().min(1).max(40),
  from: z.iso.datetime({ offset: true }),
  to: z.iso.datetime({ offset: true }),
  kind: z.enum(['other-trade', 'wind', 'extra']),
  who: z.string().max(80),
  about: z.string().max(200),
});
export type CraneBooking = z.output<typeof craneBooking>;
