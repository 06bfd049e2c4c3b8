// Names of book files: what a person typed turned into one full path, and a path into a name to show.
import path from 'node:path';
import { answer, refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';

export const bookEnding = '.regang';

export function demoFile(folder: string): string {
  return path.join(folder, `demo${bookEnding}`);
}

export function bookName(file: string): string {
  return path.basename(file, bookEnding);
}

/**
 * A full path stays as it is; a bare name goes into `folder`. The ending is added where there is none. A name with
 * folders in it that is not a full path is refused, since nobody could say where it would go.
 */
export function bookFileIn(folder: string, given: string): Answer<string> {
  const trimmed = given.trim();
  const named = path.extname(trimmed) === '' ? `${trimmed}${bookEnding}` : trimmed;
  if (path.isAbsolute(named)) return answer(path.normalize(named));
  const isBare = trimmed !== '' && !/[/\\:]/u.test(named) && !named.startsWith('.');
  if (isBare) return answer(path.join(folder, named));
  return refuse('bad-file-name', `"${given}" is neither a plain name nor a full path.`, {
    field: 'file',
    hint: `Maybe give a name only, such as "north yard": it goes to ${folder}.`,
  });
}
