// Figures as doors speak of them.
import { z } from 'zod';
import { figureSides } from '../yard/signed-figure.ts';
import { code, date } from './shapes.ts';

export const figureText = z.strictObject({
  owner: code,
  component: code,
  asOf: date,
  whose: z.enum(figureSides),
  quantity: z.int().min(0).max(1_000_000_000),
  signedBy: z.string().trim().min(1).max(80),
  paper: z.string().max(64).nullable(),
  remark: z.string().trim().max(400).nullable(),
});
