// What the window remembers between starts: where it stood, and the folder last used in a dialog.
// Losing it is harmless, so that a broken file counts as none.
import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import { z } from 'zod';

const shape = z.object({
  bounds: z.object({ x: z.int(), y: z.int(), width: z.int().min(400), height: z.int().min(300) }).optional(),
  maximized: z.boolean().optional(),
  folder: z.string().optional(),
});
export type Remembered = z.output<typeof shape>;

export class Memory {
  readonly #file: string;
  #values: Remembered;

  constructor(file: string) {
    this.#file = file;
    this.#values = readFrom(file);
  }

  get values(): Remembered {
    return this.#values;
  }

  keep(changes: Remembered): void {
    this.#values = { ...this.#values, ...changes };
    try {
      writeFileSync(`${this.#file}.new`, JSON.stringify(this.#values));
      renameSync(`${this.#file}.new`, this.#file);
    } catch (error) {
      console.error(`regang: the window's place could not be kept: ${String(error)}`);
    }
  }
}

function readFrom(file: string): Remembered {
  try {
    const parsed = shape.safeParse(JSON.parse(readFileSync(file, 'utf8')));
    return parsed.success ? parsed.data : {};
  } catch {
    return {};
  }
}
