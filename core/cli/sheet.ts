// `regang sheet KIND --book FILE --design CODE --out FILE.html`: one sheet as a file of its own, to be printed by
// any browser. Sheets of the yard are named by `--id` instead.
import { readFile, writeFile } from 'node:fs/promises';
import { Temporal } from 'temporal-polyfill';
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';
import { doorContext } from '../host/door-context.ts';
import { paperSheets } from '../procedures/paper-sheets.ts';
import { sheetAssembly } from '../procedures/sheet-assembly.ts';
import { sheetPick } from '../procedures/sheet-pick.ts';
import { paperSheetInput, sheetInput, sheetOutput } from '../procedures/sheet-shape.ts';
import { sheetHtml } from '../sheets/html.ts';
import type { BookCommand } from './commands.ts';
import { outcomeOf } from './outcome.ts';
import { ask, bookOption, fileFromHere, readOptions, withBook } from './with-book.ts';

const gangSheets = { assembly: sheetAssembly, pick: sheetPick } as const;

const fileOptions = {
  book: bookOption,
  out: z.string().min(1).meta({ description: 'The HTML file to write; it must not be there yet' }),
};
const ofGang = sheetInput.extend({ kind: z.enum(['assembly', 'pick']), ...fileOptions });
const ofPaper = paperSheetInput.extend({ kind: z.enum(Object.keys(paperSheets)), ...fileOptions });
const ofDays = ofPaper.extend({
  kind: z.enum(['week', 'day']),
  from: z.exactOptional(z.iso.date()).meta({ description: 'The first day; as in the id JOB@2026-03-09' }),
});
const input = z.union([ofGang, ofDays, ofPaper]);
const output = z.strictObject({
  file: z.string(),
  sheet: z.string(),
  design: z.exactOptional(z.string()),
  id: z.exactOptional(z.string()),
});

export const sheet: BookCommand = {
  input,
  output,
  run: async (given) => {
    // The kind decides what else is to be given, so that a refusal names what this kind lacks.
    const options = optionsOf(given);
    if (!options.ok) return outcomeOf(options);
    const { kind, book, out, ...asked } = options.value;
    const procedure = kind === 'assembly' || kind === 'pick' ? gangSheets[kind] : paperSheets[kind];
    if (procedure === undefined) throw new Error(`No sheet ${kind}.`);
    const made = await withBook(book, async (opened) => ask(opened, procedure, asked));
    if (!made.ok) return outcomeOf(made);
    if (!made.value.ok) return outcomeOf(made.value);
    const css = await sheetStyle();
    const html = sheetHtml(sheetOutput.parse(made.value.value), printedNow(), css);
    return outcomeOf(await writeNew(fileFromHere(out), html), (written) => ({
      file: written,
      sheet: kind,
      ...('design' in asked ? { design: asked.design } : { id: asked.id }),
    }));
  },
};

type Asked = z.output<typeof ofGang> | z.output<typeof ofPaper>;

function optionsOf(given: Parameters<BookCommand['run']>[0]): Answer<Asked> {
  const [kind = ''] = given.positionals;
  if (kind === 'week' || kind === 'day') {
    const options = readOptions(ofDays, given, ['kind']);
    if (!options.ok) return options;
    const { from, id, ...rest } = options.value;
    return answer({ ...rest, id: from === undefined ? id : `${id}@${from}` });
  }
  return Object.hasOwn(paperSheets, kind)
    ? readOptions(ofPaper, given, ['kind'])
    : readOptions(ofGang, given, ['kind']);
}

async function sheetStyle(): Promise<string> {
  const parts = ['sheet', 'lists', 'drawing', 'tags', 'week'].map((name) =>
    readFile(new URL(`../sheets/${name}.css`, import.meta.url), 'utf8'),
  );
  return (await Promise.all(parts)).join('\n');
}

/** "Wed 11 Mar 2026 07:00 by NAME", by this machine's clock. */
function printedNow(): string {
  const { at, who } = doorContext();
  const words = Temporal.PlainDateTime.from(at).toLocaleString('en-GB', {
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    hour: '2-digit',
    minute: '2-digit',
  });
  return `${words.replaceAll(',', '')} by ${who}`;
}

/** A file that is there already is never written over. */
async function writeNew(file: string, text: string): Promise<Answer<string>> {
  try {
    await writeFile(file, text, { flag: 'wx' });
    return answer(file);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : '';
    if (code === 'EEXIST')
      return refuse('file-exists', `${file} is there already; it was not touched.`, {
        field: 'out',
        hint: 'Maybe give another name.',
      });
    const why = error instanceof Error ? error.message : String(error);
    return refuse('file-not-written', `${file} could not be written: ${why}`, {
      field: 'out',
      hint: 'Maybe its folder is not there.',
    });
  }
}
