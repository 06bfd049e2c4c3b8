// Tags, tickets and count sheets printed to PDF at both doors, and their QR codes read back from the pages as a
// telephone would: each says which thing of which job it belongs to.
import { rmSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { readScanCode } from '../../core/yard/scan-code.ts';
import { coreOf, type CoreCall } from './call-core.ts';
import { doorTest } from './door-test.ts';
import { doorKinds, newFolder, openDoor, type OpenDoor } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';
import { readQrOfPdf } from './read-qr.ts';
import { pdfBytesOf } from './sheet-pdf.ts';

const job = 'TB26';
const at = '2026-02-25T07:00:00-05:00';

let folder: string;
beforeAll(() => {
  folder = newFolder();
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe.each(doorKinds)('%s', (kind) => {
  doorTest(
    kind,
    'QR codes of tags, a strip ticket and a count sheet are read back from their PDF',
    async () => {
      const door = await openDoor(kind, { demo: true });
      door.page.setDefaultTimeout(20_000);
      try {
        const call = await coreOf(door);
        for (const gang of ['GA-1', 'GA-2']) await told(call, 'gang.build', gangOf(gang));
        const box = { container: 'BKT 7', component: 'BKT', owner: 'OURS', place: 'ENN', at };
        await told(call, 'container.make', box);
        const ticket = await told(call, 'ticket.make', { job, pour: 'P01', loose: true });
        const count = await told(call, 'count.start', { kind: 'spot' });
        expect(await read(door, '/sheets/tags/all-gangs')).toEqual([
          { kind: 'gang', job, code: 'GA-1' },
          { kind: 'gang', job, code: 'GA-2' },
        ]);
        expect(await read(door, '/sheets/tags/all-containers')).toEqual([
          { kind: 'container', job: null, code: 'BKT 7' },
        ]);
        expect(await read(door, `/sheets/strip/${String(ticket['ticket'])}`)).toEqual([
          { kind: 'ticket', job, code: ticket['name'] },
        ]);
        expect(await read(door, `/sheets/count/${String(count['count'])}`)).toEqual([
          expect.objectContaining({ kind: 'count', code: count['name'] }),
        ]);
      } finally {
        await door.close();
      }
    },
  );
});

function gangOf(gang: string) {
  return { gang, design: 'GA', from: 'ENN', at, job };
}

async function told(call: CoreCall, name: string, input: object): Promise<Record<string, unknown>> {
  const answered = await call(name, { ...input, commandId: `command-${crypto.randomUUID()}` });
  if (!answered.ok) throw new Error(`${name}: ${answered.error.message}`);
  return answered.value;
}

/** What stands in the QR codes of a sheet, in the order of the pages. */
async function read(door: OpenDoor, address: string) {
  await goToScreen(door.page, address);
  const pages = await readQrOfPdf(await pdfBytesOf(door, folder));
  return pages.flat().map((text) => {
    const code = readScanCode(text);
    if (!code.ok) throw new Error(code.error.message);
    return code.value;
  });
}
