// The further rule tables and columns from CSV: read into the book as a person wrote them, gaps refused at their row.
import { afterEach, describe, expect, test } from 'vitest';
import { aBook, type TestBook } from './a-book.ts';

const inchNm = 25_400_000;
const footNm = 12 * inchNm;
const opened: TestBook[] = [];
afterEach(async () => {
  for (const book of opened.splice(0)) await book.end();
});

const components = `code,name,kind,system,weight,width,height,length,permitted pressure (psf),permitted pressure on side,can shrink
P,Panel,panel,S,200 lb,36 in,8 ft,,1250,40 kPa,no
IC,Inside corner,inside-corner,S,96 lb,12 in,8 ft,,,,yes
LK,Lock,lock,,5 lb,,,,,,
R6,Rail,rail,,30 lb,,,6 ft,,,
RB,Rail bolt,rail-bolt,,2 lb,,,,,,
HK,Hook,hook,,20 lb,,,,,,
WB,Bracket,bracket,,30 lb,,,,,,
PK,Plank,plank,,40 lb,,,10 ft,,,
PO,Post,post,,12 lb,,,,,,
BR,Brace,brace,,75 lb,,,,,,
`;
const rules = `system,table,setting,condition,value,source
S,locks,component,,LK,
S,locks,count,4 ft,2,default
S,locks,count,9 ft,4,default
S,rails,across,,horizontal-joints,
S,rails,cover,,each-joint,
S,rails,maximum average spacing,,6 ft,default
S,rails,minimum length,20 ft,3 ft,default
S,rails,needed for,,picking,
S,rails,reach cross member,,yes,
S,rails,merge meeting,,yes,
S,placing rails,across,,vertical-joints,
S,placing rails,cover,,full-length,
S,placing rails,maximum average spacing,,4 ft,sheet 7
S,placing rails,minimum length,20 ft,6 ft,sheet 7
S,placing rails,bolt,,RB,
S,hooks,component,,HK,
S,hooks,capacity,,1250 lb,default
S,hooks,rated for,,gang-weight,
S,hooks,minimum,,2,default
S,hooks,places,,top member; panel joint,
S,brackets,component,,WB,
S,brackets,maximum spacing,,8 ft,default
S,brackets,planks wide,,2,sheet 8
S,brackets,post,,PO,
S,brackets,posts a bracket,,1,default
S,brackets,guardrail rows,,0,default
S,braces,component,,BR,
S,braces,maximum spacing,,8 ft,default
S,braces,sides,,both,
S,stop-ends,hours a m2,,1.5,sheet 9
S,stop-ends,backing,,R6,
S,stop-ends,backing spacing,,2 ft,sheet 9
S,closures,hours a m2,,2,default
`;

async function withComponents(text = components): Promise<TestBook> {
  const book = await aBook();
  opened.push(book);
  expect((await book.take('components', text)).bad).toEqual([]);
  return book;
}

describe('further columns and tables', () => {
  test('permitted pressures and whether a corner can be drawn in are kept', async () => {
    const { book } = await withComponents();
    const kept = await book.read((reader) => reader.components());
    expect(kept.find(({ code }) => code === 'P')).toMatchObject({
      pressurePa: 59_850,
      pressureOnSidePa: 40_000,
    });
    expect(kept.find(({ code }) => code === 'P')).not.toHaveProperty('canShrink');
    expect(kept.find(({ code }) => code === 'IC')).toMatchObject({ canShrink: true });
  });

  test.each([
    ['1250,40 kPa', '0,40 kPa', 'permitted pressure (psf)'],
    ['1250,40 kPa', '1250,40', 'permitted pressure on side'],
    ['1250,40 kPa', 'strong,40 kPa', 'permitted pressure (psf)'],
    ['kPa,no', 'kPa,perhaps', 'can shrink'],
  ])('%s as %s is refused at its column', async (from, to, column) => {
    const book = await aBook();
    opened.push(book);
    expect((await book.take('components', components.replace(from, to))).bad).toMatchObject([
      { line: 2, column },
    ]);
  });

  test('every setting of the further tables is read, with its source', async () => {
    const { book, take } = await withComponents();
    expect((await take('rules', rules)).bad).toEqual([]);
    const [version] = await book.read((reader) => reader.ruleVersions());
    expect(version?.rules).toMatchObject({
      rails: { neededFor: 'picking', reachCrossMember: true, mergeMeeting: true },
      placingRails: {
        across: 'vertical-joints',
        cover: 'full-length',
        maximumAverageSpacingNm: 4 * footNm,
        lengths: [{ gangUpToNm: 20 * footNm, minimumNm: 6 * footNm }],
        bolt: 'RB',
      },
      hooks: { places: ['top-member', 'panel-joint'] },
      brackets: { platform: { planksWide: 2, post: 'PO', postsPerBracket: 1, guardrailRows: 0 } },
      braces: { sides: 'both' },
      stopEnds: { hoursPerM2: 1.5, backing: 'R6', backingSpacingNm: 2 * footNm },
      closures: { hoursPerM2: 2 },
      sources: {
        'placingRails.lengths': 'sheet 7',
        'brackets.platform.planksWide': 'sheet 8',
        'stopEnds.hoursPerM2': 'sheet 9',
      },
    });
  });

  test.each([
    ['counts that go down', 'count,9 ft,4', 'count,9 ft,1', 4, 'goes down'],
    ['a row without locks', 'count,4 ft,2', 'count,4 ft,0', 3, 'would take no lock'],
    ['rails longer than there are', '20 ft,6 ft,sheet 7', '20 ft,7 ft,sheet 7', 15, 'would have no rails'],
    ['guardrails that are not there', 'rows,,0', 'rows,,2', 27, 'none of a known length'],
    ['a post that is a hook', 'post,,PO', 'post,,HK', 25, 'is a hook and no post'],
    ['two tables for placing', 'for,,picking', 'for,,placing', 9, 'two tables for one need'],
  ])('%s: refused at the row', async (_, from, to, line, wanted) => {
    const { take } = await withComponents();
    const { bad, stored } = await take('rules', rules.replace(from, to));
    expect(stored).toBe(false);
    expect(bad).toHaveLength(1);
    expect(bad[0]).toMatchObject({ line, column: 'value' });
    expect(bad[0]?.wanted).toContain(wanted);
  });

  test('all that is wrong with a system is told at once', async () => {
    const { take } = await withComponents();
    const wrong = rules.replace('count,9 ft,4', 'count,9 ft,1').replace('post,,PO', 'post,,HK');
    expect((await take('rules', wrong)).bad.map(({ line }) => line)).toEqual([4, 25]);
  });

  test('a design without braces is kept as one, others say nothing of it', async () => {
    const { book, take } = await withComponents();
    await take('rules', rules);
    const designs = `design,name,system,revision,hand,braced,assemble hours,break down hours,item,x,y
G1,One,S,A,left,no,1,1,P,0,0
G2,Two,S,A,left,,1,1,P,0,0
G3,Three,S,A,left,yes,1,1,P,0,0
`;
    expect((await take('designs', designs)).bad).toEqual([]);
    const kept = await book.read((reader) => reader.designs());
    expect(kept.map(({ geometry }) => geometry.braced)).toEqual([false, undefined, undefined]);
  });
});
