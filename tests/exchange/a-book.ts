// A small book in a temporary folder, with files imported by the procedure as a door would do it.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { openBook, type OpenBook } from '../../core/book/open.ts';
import type { ImportOutcome } from '../../core/exchange/import.ts';
import type { ImportKind } from '../../core/exchange/prepared.ts';
import { importFile } from '../../core/procedures/import-file.ts';

export const context = { at: '2026-02-20T16:00:00-05:00', who: 'yard' };

export interface TestBook {
  readonly book: OpenBook;
  readonly take: (kind: ImportKind, text: string, more?: ImportOptions) => Promise<ImportOutcome>;
  /** Everything that imports can change, to compare before and after. */
  readonly content: () => Promise<unknown>;
  readonly end: () => Promise<void>;
}

interface ImportOptions {
  readonly commandId?: string;
  readonly job?: string;
  readonly columns?: Readonly<Record<string, string>>;
  readonly dryRun?: boolean;
}

export async function aBook(): Promise<TestBook> {
  const folder = mkdtempSync(path.join(tmpdir(), 'regang-import-'));
  const opened = await openBook(path.join(folder, 'a.regang'), { mode: 'create', now: context.at });
  if (!opened.ok) throw new Error(opened.error.message);
  const book = opened.value;
  let count = 0;
  return {
    book,
    take: async (kind, text, more = {}) => {
      count += 1;
      const input = importFile.input.parse({ commandId: `import-${count}`, kind, text, ...more });
      const meta = { commandId: input.commandId, name: importFile.name, ...context };
      const done = await book.command(meta, (writer) => importFile.run(writer, input, context));
      if (!done.ok) throw new Error(`${done.error.code}: ${done.error.message}`);
      return importFile.output.parse(done.value);
    },
    content: () =>
      book.read(async (reader) => ({
        components: await reader.components(),
        rules: await reader.ruleVersions(),
        locations: await reader.locations(),
        owners: await reader.owners(),
        designs: await reader.designs(),
        jobs: await reader.jobs(),
        pours: await Promise.all((await reader.jobs()).map((job) => reader.pours(job.code))),
        movements: await reader.movements({ limit: 1000 }),
      })),
    end: async () => {
      await book.close();
      rmSync(folder, { recursive: true });
    },
  };
}

export const files = {
  components: `code,name,kind,system,weight,width,height,length,tie holes,hire per day
P836,Panel 36 in x 8 ft,panel,S,200 lb,36 in,8 ft,,18 in x 24 in,0.80
P824,Panel 24 in x 8 ft,panel,S,140 lb,24 in,8 ft,,12 in x 24 in,
LK,Lock,lock,,5 lb,,,,,0.04
BR,Brace,brace,,75 lb,,,,,
TR,Tie rod,tie,,6 lb,,,,,
`,
  rules: `system,system name,table,setting,condition,value,source
S,Small system,locks,component,,LK,
S,,locks,count,2 ft,1,default
S,,locks,count,up to 8 ft,3,sheet 2
S,,ties,holes,,yes,
`,
  places: `what,code,name,kind,agreement
location,YARD,The yard,yard,
location,DEPOT,A depot,supplier,
owner,OURS,Our own,ours,
owner,HIRE,A supplier,supplier,A-1
`,
  jobs: `code,name,time zone,currency,units,plan from,days,start,end,off days,crew,labour per hour,fly on hours,regang base hours,clean hours
J1,A job,America/New_York,USD,us,2026-03-02,Mon-Fri,7:00,15:30,2026-04-03,5,58.00,1,0.5,15
`,
  stock: `component,quantity,condition,owner,location,basis,date,reason,from,remark
P836,40,ready,OURS,YARD,counted,2026-02-20,,,
P836,2,to clean,OURS,YARD,counted,2026-02-20,,,two bent
LK,300,ready,HIRE,YARD,taken from list,2026-02-20,,,
LK,20,ready,HIRE,YARD,,2026-03-12 09:00,delivery,DEPOT,
`,
  designs: `design,name,system,revision,hand,left edge,right edge,assemble hours,break down hours,item,x (in),y (in),width (in),height (in)
G1,Gang 6 x 8 ft,S,A,symmetrical,,,1,0.5,P836,0,0,,
G1,,,,,,,,,P836,36,0,,
G2,"Gang 5'-4"" x 8 ft",S,A,left,next-gang,stop-end,1,0.5,P836,0,0,,
G2,,,,,,,,,filler,36,0,4,96
G2,,,,,,,,,P824,40,0,,
`,
  pours: `job,pour,name,order,set A,set B,set hours A,set hours B,finish,strip minimum hours,strip hours,after,gangs A,gangs B,loose,gates,tie
J1,1,Wall 1,face-first,2026-03-02 07:00,2026-03-04 07:00,3,3,2026-03-05 13:00,24,2,,G1 @ 0; G2 @ 6 ft,"G1 @ 0; G2 @ 6'-0""",both LK 10 locks between gangs; A BR 4 braces,"close: steel, steel crew, 2026-03-03; pour: inspection, inspector, 2026-03-05, done",TR
J1,2,Wall 2,steel-first,2026-03-09 07:00,2026-03-09 10:30,3,3,2026-03-10 13:00,24,2,1,G1 @ 0,G1 @ 0,,,
`,
} as const satisfies Partial<Record<ImportKind, string>>;

const order = ['components', 'rules', 'places', 'jobs', 'stock', 'designs', 'pours'] as const;

/** A book with all of `files` in it, up to but not including `kind` where one is given. */
export async function filledBook(before?: ImportKind): Promise<TestBook> {
  const made = await aBook();
  for (const kind of order) {
    if (kind === before) break;
    const done = await made.take(kind, files[kind]);
    if (!done.stored) throw new Error(`${kind}: ${JSON.stringify(done.bad)}`);
  }
  return made;
}
