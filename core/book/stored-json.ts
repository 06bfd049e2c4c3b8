// Reads a JSON text of the book by its shape. The book wrote it itself, so one that does not fit is
// damage or a bug, and is thrown with its place.
import type { z } from 'zod';

export function storedJson<Shape extends z.ZodType>(
  shape: Shape,
  text: string,
  place: string,
): z.output<Shape> {
  const parsed = shape.safeParse(JSON.parse(text));
  if (parsed.success) return parsed.data;
  throw new Error(`What the book keeps for ${place} is not of its shape: ${parsed.error.message}`);
}
