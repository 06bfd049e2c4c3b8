// JSON texts in the book, written and read by their shape: what could not be read again is not written.
// A text that does not fit is damage or a bug, and is thrown with its place.
import type { z } from 'zod';

export function storedJson<Shape extends z.ZodType>(
  shape: Shape,
  text: string,
  place: string,
): z.output<Shape> {
  const parsed = shape.safeParse(JSON.parse(text));
  if (parsed.success) return parsed.data;
  throw new Error(`What the book keeps of ${place} is not of its shape: ${parsed.error.message}`);
}

export function toStoredJson<Shape extends z.ZodType>(
  shape: Shape,
  value: z.output<Shape>,
  place: string,
): string {
  const text = JSON.stringify(value);
  storedJson(shape, text, place);
  return text;
}
