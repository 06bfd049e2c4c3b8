// Tags to print: of one gang or container, or of all that are there (`all-gangs`, `all-containers`).
import { answer, refuse } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { type SheetTag, tagSheet } from '../sheets/tag-sheet.ts';
import { formatLength, type UnitSystem } from '../units/length-format.ts';
import { formatWeight } from '../units/weight.ts';
import type { Job } from '../plan/pours.ts';
import type { Container } from '../yard/container.ts';
import type { Gang } from '../yard/gang.ts';
import { scanCode } from '../yard/scan-code.ts';
import { asData } from './as-data.ts';
import { byCode, found } from './by-code.ts';
import { type GangFacts, readGangFacts } from './gang-facts.ts';
import { query } from './procedure.ts';
import { paperSheetInput, sheetOutput } from './sheet-shape.ts';

export const sheetTags = query({
  name: 'sheet.tags',
  input: paperSheetInput,
  output: sheetOutput,
  run: async (book, { id, units: asked }) => {
    const [facts, containers, jobs] = await Promise.all([
      readGangFacts(book),
      book.containers(),
      book.jobs(),
    ]);
    const units = asked ?? jobs[0]?.units ?? 'us';
    const there = facts.gangs.filter((each) => each.last.state !== 'broken-down');
    const gangs = id === 'all-gangs' ? there : facts.gangs.filter((each) => each.code === id);
    const boxes = id === 'all-containers' ? containers : containers.filter((each) => each.code === id);
    const tags = [
      ...gangs.map((gang) => gangTag(gang, facts, units)),
      ...(await containerTags(book, boxes, units)),
    ];
    const all =
      id === 'all-gangs' ? 'Tags of all gangs' : id === 'all-containers' ? 'Tags of all containers' : null;
    if (tags.length === 0 && all === null)
      return refuse('unknown-tag', `There is no gang and no container ${id} in this book.`, {
        field: 'id',
        hint: 'Maybe all-gangs or all-containers is meant.',
      });
    return answer(asData(tagSheet(all ?? `Tag ${id}`, tags, { job: jobWords(gangs, jobs), units })));
  },
});

/** The jobs that the gangs are built for; the book's own where none is named and it holds one. */
function jobWords(gangs: readonly Gang[], jobs: readonly Job[]): string {
  const named = new Set(gangs.map((each) => each.last.job));
  const those = jobs.filter((each) => named.has(each.code) || jobs.length === 1);
  return those.length === 0 ? 'none named' : those.map((each) => `${each.code} ${each.name}`).join(', ');
}

const handWords = { left: 'left', right: 'right', symmetrical: 'either' } as const;

function gangTag(gang: Gang, facts: GangFacts, units: UnitSystem): SheetTag {
  const row = facts.row(gang);
  const { takeOff, hand } = facts.makeUpOf(gang);
  const hooks = takeOff?.hooks.length ?? 0;
  return {
    code: gang.code,
    kind: 'gang',
    name: `${row.design} ${row.designName}`,
    scan: scanCode({ kind: 'gang', job: row.job, code: gang.code }),
    facts: [
      ['Weight', formatWeight(row.weightGrams, units)],
      ['Hooks', takeOff === null ? 'not known' : String(hooks)],
      ['Pieces', String(row.pieces)],
      ...(takeOff === null
        ? []
        : [
            ['Wide', formatLength(takeOff.widthNm, units)] as const,
            ['High', formatLength(takeOff.heightNm, units)] as const,
          ]),
      ['Hand', hand === null ? 'not known' : handWords[hand]],
      ['Revision', row.revision === '' ? 'none' : row.revision],
      ['Built to', `saved state ${row.designState}`],
      ['Job', row.job ?? 'none named'],
    ],
    warnings: [
      'Nobody on or under it while it hangs.',
      'The weight is that of its pieces: hooks, rigging, platform and concrete left on come on top. See the pick sheet.',
      ...(row.findings.some((each) => each.severity === 'stop')
        ? ['Not as designed: pieces are missing or not ready. Ask before it is lifted.']
        : []),
      ...(row.findings.some((each) => each.rule === 'older design')
        ? ['Built to an older state of its design: it does not fly on until someone says so.']
        : []),
    ],
  };
}

async function containerTags(
  book: BookReader,
  containers: readonly Container[],
  units: UnitSystem,
): Promise<readonly SheetTag[]> {
  const [components, owners] = await Promise.all([book.components(), book.owners()]);
  const [component, owner] = [byCode(components), byCode(owners)];
  return containers.map(({ code, component: of, owner: whose }) => ({
    code,
    kind: 'container',
    name: `${of} ${found(component, of).name}`,
    scan: scanCode({ kind: 'container', job: null, code }),
    facts: [
      ['Empty', formatWeight(found(component, of).weightGrams, units)],
      ['Owner', `${whose} ${found(owner, whose).name}`],
    ],
    warnings: [
      'Weigh it with what is in it before it is lifted.',
      'Count what goes in and out under this tag.',
    ],
  }));
}
