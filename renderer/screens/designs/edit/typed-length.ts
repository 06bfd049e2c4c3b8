// A length as it is typed on the drawing, where every number is one of the reader's units.
import { parseLength, type UnitSystem } from '../../../../core/units/length.ts';

/** A bare number is inches or millimetres. Answers nanometres or why not. */
export function readTypedLength(text: string, system: UnitSystem): ReturnType<typeof parseLength> {
  const bare = /^-?[\d.,/ -]+$/u.test(text.trim());
  return parseLength(bare ? `${text.trim()} ${system === 'us' ? 'in' : 'mm'}` : text);
}
