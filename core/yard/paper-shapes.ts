// Small shapes that the yard's papers are made of: codes, moments, quantities by condition.
import { z } from 'zod';
import { conditions } from './movement.ts';

export const paperId = z.string().min(8).max(64);
export const placeCode = z.string().trim().min(1).max(40);
export const componentCode = z.string().trim().min(1).max(40);
export const ownerCode = z.string().trim().min(1).max(40);
/** ISO 8601 with an offset, never a bare local time. */
export const moment = z.iso.datetime({ offset: true });
export const pieces = z.int().min(0).max(1_000_000_000);
export const somePieces = z.int().min(1).max(1_000_000_000);
export const remark = z.string().trim().max(400);
export const person = z.string().trim().min(1).max(80);
export const grams = z.int().min(0).max(Number.MAX_SAFE_INTEGER);
export const conditionWord = z.enum(conditions);
