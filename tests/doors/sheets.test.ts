// Both sheets to PDF at both doors, and what they say read back out of the file: in the browser as its print
// dialog saves it, on the desktop by its own button and a native dialog.
import { rmSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { demoHost, type DemoHost } from '../procedures/demo-host.ts';
import { doorTest } from './door-test.ts';
import { doorKinds, newFolder, openDoor, type OpenDoor } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';
import { pickedBook } from './picked-book.ts';
import { quantityIn, type ReadPdf } from './read-pdf.ts';
import { answerDialog, pdfOf } from './sheet-pdf.ts';

const letter = [612, 792];
/** 210 by 297 mm (ISO 216) in points. */
const a4 = [595, 842];

let demo: DemoHost;
let folder: string;
let book: string;

beforeAll(async () => {
  folder = newFolder();
  demo = await demoHost();
  book = await pickedBook(folder);
});
afterAll(async () => {
  await demo.close();
  rmSync(folder, { recursive: true, force: true });
});

describe.each(doorKinds)('%s', (kind) => {
  doorTest(
    kind,
    'the assembly sheet as PDF says the quantities of the take-off, whole, page by page',
    async () => {
      await withDoor(kind, async (door) => {
        await goToScreen(door.page, '/sheets/assembly/GC');
        const pdf = await pdfOf(door, folder);
        expectPages(door, pdf, letter, 'Assembly sheet GC');
        const { lines } = await demo.ask('design.read', { design: 'GC' });
        expect(lines.length).toBeGreaterThan(6);
        for (const { component, name, quantity } of lines)
          expect(quantityIn(pdf.words, component, name), component).toBe(quantity);
        // The list to tick is not torn: all of it is on one page.
        const [list] = pdf.pages.filter((page) => page.includes(' LK Lock'));
        for (const { component, name } of lines) expect(list).toContain(`${component} ${name}`);
        expect(pdf.words).toContain('Order of assembly, face down');
        expect(pdf.words).toContain('P04 side B');
        expect(pdf.words).toMatch(/Printed \w{3} \d+ \w{3} \d{4} \d\d:\d\d by tester/u);
      });
    },
  );

  doorTest(
    kind,
    'the pick sheet as PDF says what hangs on the crane, and a refusal before all else',
    async () => {
      await withDoor(kind, async (door) => {
        await goToScreen(door.page, '/sheets/pick/GC');
        const pdf = await pdfOf(door, folder);
        expectPages(door, pdf, letter, 'Pick sheet GC');
        const { lines } = await demo.ask('design.read', { design: 'GC' });
        for (const { component, name, quantity } of lines)
          expect(pdf.words, component).toMatch(
            new RegExp(`${component} ${literally(name)} ${quantity} [0-9.,]+ lb catalogue`, 'u'),
          );
        // 1,330 lb with 5 % of concrete, hooks 44 lb, slings 20 kg = 44.1 lb, always on the crane 90 kg = 198 lb.
        expect(pdf.words).toContain('on the crane 1,683 lb');
        expect(pdf.words).toContain('Wind limit 21.9 mph, set by: the crane maker.');
        await goToScreen(door.page, '/sheets/pick/GA');
        const refused = await pdfOf(door, folder);
        expect(refused.pages[0]).toMatch(/refused Not to be picked so: 1 stop/iu);
        expect(refused.pages[0]).toContain('where its chart carries');
      });
    },
  );

  doorTest(kind, 'in metric units a sheet lies on A4', async () => {
    await withDoor(kind, async (door) => {
      await goToScreen(door.page, '/sheets/assembly/GT');
      await door.page.getByRole('radio', { name: 'metric' }).click();
      await door.page.getByText('3657.6 mm × 3048 mm').first().waitFor();
      const pdf = await pdfOf(door, folder);
      expectPages(door, pdf, a4, 'Assembly sheet GT');
      expect(pdf.words).toContain('dimensions in mm');
    });
  });
});

doorTest(
  'desktop',
  'nothing is written where nobody chooses a file, and a folder that is not there is said',
  async () => {
    await withDoor('desktop', async (door) => {
      await goToScreen(door.page, '/sheets/assembly/GC');
      const button = door.page.getByRole('button', { name: 'Save as PDF…' });
      await answerDialog(door, null);
      await button.click();
      await answerDialog(door, path.join(folder, 'not', 'there.pdf'));
      await button.click();
      await door.page.getByText(/^Not saved: .*there\.pdf/u).waitFor();
    });
  },
);

async function withDoor(kind: OpenDoor['kind'], work: (door: OpenDoor) => Promise<void>): Promise<void> {
  const door = await openDoor(kind, { book });
  door.page.setDefaultTimeout(20_000);
  try {
    await work(door);
  } finally {
    await door.close();
  }
}

/** The paper, the foot of every page, and that nothing is cut: no words nearer the edge than the margin. */
function expectPages(door: OpenDoor, pdf: ReadPdf, paper: readonly number[], name: string): void {
  expect(pdf.pages.length).toBeGreaterThan(1);
  for (const [index, page] of pdf.pages.entries()) {
    expect(pdf.sizes[index]?.map(Math.round)).toEqual(paper);
    expect(page).toContain(`page ${index + 1} of ${pdf.pages.length}`);
    // A desktop runtime that is too old for a foot of our own has one of its own, without the revision.
    expect(page).toMatch(new RegExp(`${name}( revision A)? · TB26 Tarrowmere Basin`, 'u'));
    if (door.kind === 'local') expect(page).toMatch(/revision A · .* · planning aid only/u);
    // Without the app around it, and no heading left alone at the end.
    expect(page).not.toContain('Find or do');
    expect(page).not.toMatch(
      /(?:Pieces|Cautions|Before it flies|Hooks and slings|Where it stands, seen from its back)$/u,
    );
  }
  // The side margins are 12 mm, 34 pt; the foot stands in the lower margin.
  expect(pdf.sidePt).toBeGreaterThan(33);
  expect(pdf.endPt).toBeGreaterThan(15);
}

function literally(words: string): string {
  return words.replaceAll(/[.*+?^${}()|[\]\\]/gu, String.raw`\$&`);
}
