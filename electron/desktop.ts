// One desktop session: its window, its core, and what passes between them. Opened by main once the
// runtime is ready.
import path from 'node:path';
import { MessageChannelMain, app, dialog, ipcMain } from 'electron';
import type { BrowserWindow, IpcMainEvent, IpcMainInvokeEvent } from 'electron';
import type { Answer, Refusal } from '../core/answer.ts';
import { hostState } from '../core/host/host-calls.ts';
import { startCore } from './core-link.ts';
import { openFirst } from './first-book.ts';
import type { FirstBook } from './first-book.ts';
import type { BookChoice } from './menu.ts';
import { isPageAddress } from './page-scheme.ts';
import { pick, pickKind } from './pick.ts';
import { readyLine } from './ready-line.ts';
import { Relay, coreEnded } from './relay.ts';
import { Memory } from './remembered.ts';
import { savePdf } from './save-pdf.ts';
import { openWindow, titleFor } from './window.ts';

const dist = path.join(import.meta.dirname, '..');

export class Desktop {
  readonly #memory = new Memory(path.join(app.getPath('userData'), 'window.json'));
  readonly #relay: Relay;
  #window: BrowserWindow | null = null;
  #lastFile: string | null = null;
  /** One port for each load of the page. */
  #handedOut = false;

  constructor() {
    const program = path.join(dist, 'core', 'process.mjs');
    this.#relay = new Relay((listener) => startCore(program, process.env['REGANG_CORE_NODE'], listener), {
      onCoreEnd: (why) => void this.#offerRestart(why),
      onAnswer: (name, answered) => this.#noteState(name, answered),
    });
    ipcMain.on('regang:want-port', (event) => this.#handOutPort(event));
    ipcMain.handle('regang:pick', async (event, kind) => this.#pick(event, kind));
    ipcMain.handle('regang:pdf', async (event) =>
      this.#isOwnPage(event) && this.#window !== null ? savePdf(this.#window, this.#memory) : null,
    );
  }

  get window(): BrowserWindow | null {
    return this.#window;
  }

  start(first: FirstBook): void {
    this.#relay.startCore();
    void this.openBook(first);
    this.showWindow();
  }

  async stop(): Promise<void> {
    await this.#relay.stopCore();
  }

  showWindow(): void {
    if (this.#window !== null) {
      if (this.#window.isMinimized()) this.#window.restore();
      this.#window.focus();
      return;
    }
    const window = openWindow(path.join(dist, 'electron', 'preload.cjs'), this.#memory);
    this.#window = window;
    window.on('closed', () => {
      this.#window = null;
    });
    window.webContents.on('did-start-navigation', (details) => {
      if (details.isMainFrame && !details.isSameDocument) this.#handedOut = false;
    });
    window.webContents.once('did-finish-load', () => console.log(readyLine));
    void this.#relay.call('host.state', {});
  }

  async openBook(first: FirstBook): Promise<void> {
    await this.#tellOpened(await openFirst((name, input) => this.#relay.call(name, input), first));
  }

  async choose(choice: BookChoice): Promise<void> {
    if (choice === 'open-demo') {
      await this.#bookCall('host.demo', {});
      return;
    }
    if (this.#window === null) return;
    const file = await pick(this.#window, this.#memory, choice);
    if (typeof file !== 'string') return;
    const name = { 'new-book': 'host.create', 'open-book': 'host.open', 'copy-book': 'host.copy' } as const;
    await this.#bookCall(name[choice], { file });
  }

  /** By the menu: no screen asked, so that what went wrong is shown in a native box. */
  async savePdf(): Promise<void> {
    if (this.#window === null) return;
    const saved = await savePdf(this.#window, this.#memory);
    if (saved !== null && 'error' in saved)
      await this.#showRefusal({ code: 'pdf-not-saved', message: saved.error });
  }

  go(direction: 'back' | 'forward'): void {
    const history = this.#window?.webContents.navigationHistory;
    if (direction === 'back') history?.goBack();
    else history?.goForward();
  }

  /** A call that the window itself makes; a refusal is shown in a native box, since no screen asked. */
  async #bookCall(name: string, input: unknown): Promise<void> {
    await this.#tellOpened(await this.#relay.call(name, input));
  }

  async #tellOpened(answered: Answer<unknown>): Promise<void> {
    if (!answered.ok) await this.#showRefusal(answered.error);
    else if (hostState.safeParse(answered.value).success)
      this.#window?.webContents.send('regang:menu', 'book-opened');
  }

  async #showRefusal(refusal: Refusal): Promise<void> {
    // Said already, with the offer to start it again.
    if (refusal.code === coreEnded.error.code) return;
    const box = {
      type: 'warning' as const,
      title: 'Regang',
      message: refusal.message,
      detail: refusal.hint ?? '',
      buttons: ['Close'],
    };
    await (this.#window === null ? dialog.showMessageBox(box) : dialog.showMessageBox(this.#window, box));
  }

  #noteState(name: string, answered: Answer<unknown>): void {
    if (!name.startsWith('host.') || !answered.ok) return;
    const state = hostState.safeParse(answered.value);
    if (!state.success) return;
    this.#lastFile = state.data.book?.file ?? null;
    this.#window?.setTitle(titleFor(state.data.book));
  }

  #isOwnPage(event: IpcMainEvent | IpcMainInvokeEvent): boolean {
    const frame = event.senderFrame;
    const contents = this.#window?.webContents;
    return (
      frame !== null && contents !== undefined && frame === contents.mainFrame && isPageAddress(frame.url)
    );
  }

  #handOutPort(event: IpcMainEvent): void {
    if (!this.#isOwnPage(event) || this.#handedOut) return;
    this.#handedOut = true;
    const { port1, port2 } = new MessageChannelMain();
    this.#relay.addPage(port1);
    event.sender.postMessage('regang:port', null, [port2]);
  }

  async #pick(event: IpcMainInvokeEvent, kind: unknown): Promise<unknown> {
    const parsed = pickKind.safeParse(kind);
    if (!this.#isOwnPage(event) || !parsed.success || this.#window === null) return null;
    return pick(this.#window, this.#memory, parsed.data);
  }

  async #offerRestart(why: string): Promise<void> {
    console.error(`regang: the core ended: ${why}`);
    const box = {
      type: 'error' as const,
      title: 'Regang',
      message: 'The part of Regang that keeps the book has ended.',
      detail:
        'Everything acknowledged before is in the book. Look whether your last change is there before you make it again.',
      buttons: ['Start it again', 'Not now'],
      defaultId: 0,
      cancelId: 1,
    };
    const window = this.#window;
    const { response } = await (window === null
      ? dialog.showMessageBox(box)
      : dialog.showMessageBox(window, box));
    if (response !== 0) return;
    this.#relay.startCore();
    if (this.#lastFile !== null) await this.#bookCall('host.open', { file: this.#lastFile });
    this.#relay.push({ push: 'changed', changeNumber: 0 });
  }
}
