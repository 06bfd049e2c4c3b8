// A component as doors speak of it whole: the catalogue's facts and what the yard and the hire desk add.
// Figures that cannot be are let in, so that all of them are named with their reasons and not only the first.
import { z } from 'zod';
import { componentKinds } from '../catalogue/component.ts';
import { code, hours, lengthNm } from './shapes.ts';

export const bookComponent = z.strictObject({
  code,
  name: z.string().trim().min(1).max(120),
  kind: z.enum(componentKinds),
  weightGrams: z.int(),
  widthNm: z.exactOptional(lengthNm),
  heightNm: z.exactOptional(lengthNm),
  lengthNm: z.exactOptional(lengthNm),
  crossMembersNm: z.exactOptional(z.array(lengthNm).max(100)),
  tieHolesNm: z.exactOptional(z.array(z.tuple([lengthNm, lengthNm])).max(400)),
  pressurePa: z.exactOptional(z.int()),
  pressureOnSidePa: z.exactOptional(z.int()),
  canShrink: z.exactOptional(z.boolean()),
  system: code.nullable(),
  hirePerDayCents: z.int().nullable(),
  valueCents: z.exactOptional(z.int().min(0)),
  regangPerPieceH: hours,
  remark: z.string().max(400).nullable(),
});
