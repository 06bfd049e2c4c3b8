// The native menus, in each platform's own order and with its own shortcuts.
import { Menu, app, dialog } from 'electron';
import type { BrowserWindow, MenuItemConstructorOptions } from 'electron';

export type BookChoice = 'new-book' | 'open-book' | 'open-demo' | 'copy-book';

export interface MenuActions {
  readonly choose: (choice: BookChoice) => void;
  readonly savePdf: () => void;
  readonly go: (direction: 'back' | 'forward') => void;
  readonly window: () => BrowserWindow | null;
}

const isMac = process.platform === 'darwin';

export function setMenu(actions: MenuActions): void {
  const menus: MenuItemConstructorOptions[] = [
    ...(isMac ? [{ role: 'appMenu' } as const] : []),
    fileMenu(actions),
    { role: 'editMenu' },
    viewMenu(),
    goMenu(actions),
    { role: 'windowMenu' },
    helpMenu(actions),
  ];
  Menu.setApplicationMenu(Menu.buildFromTemplate(menus));
}

function fileMenu(actions: MenuActions): MenuItemConstructorOptions {
  return {
    label: '&File',
    submenu: [
      { label: 'New book…', accelerator: 'CmdOrCtrl+N', click: () => actions.choose('new-book') },
      { label: 'Open book…', accelerator: 'CmdOrCtrl+O', click: () => actions.choose('open-book') },
      { label: 'Open the demo job', click: () => actions.choose('open-demo') },
      { type: 'separator' },
      { label: 'Save a copy…', accelerator: 'CmdOrCtrl+Shift+S', click: () => actions.choose('copy-book') },
      { type: 'separator' },
      { label: 'Print…', accelerator: 'CmdOrCtrl+P', click: () => print(actions.window()) },
      { label: 'Save as PDF…', click: () => actions.savePdf() },
      { type: 'separator' },
      { role: isMac ? 'close' : 'quit' },
    ],
  };
}

/** What is on screen, through the system's own dialog. Left there is no mishap. */
function print(window: BrowserWindow | null): void {
  // Sheets stand upright, everything else lies.
  const landscape = window?.webContents.getURL().includes('#/sheets/') !== true;
  window?.webContents.print({ landscape, printBackground: true }, (done, why) => {
    if (!done && !/cancel/iu.test(why)) console.error(`regang: not printed: ${why}`);
  });
}

function viewMenu(): MenuItemConstructorOptions {
  return {
    label: '&View',
    submenu: [
      ...(app.isPackaged ? [] : [{ role: 'reload' } as const, { role: 'toggleDevTools' } as const]),
      { role: 'resetZoom' },
      { role: 'zoomIn' },
      { role: 'zoomOut' },
      { type: 'separator' },
      { role: 'togglefullscreen' },
    ],
  };
}

function goMenu(actions: MenuActions): MenuItemConstructorOptions {
  return {
    label: '&Go',
    submenu: [
      { label: 'Back', accelerator: isMac ? 'Cmd+[' : 'Alt+Left', click: () => actions.go('back') },
      { label: 'Forward', accelerator: isMac ? 'Cmd+]' : 'Alt+Right', click: () => actions.go('forward') },
    ],
  };
}

function helpMenu(actions: MenuActions): MenuItemConstructorOptions {
  return { role: 'help', submenu: [{ label: 'About Regang', click: () => showAbout(actions.window()) }] };
}

function showAbout(window: BrowserWindow | null): void {
  const options = {
    type: 'info' as const,
    title: 'About Regang',
    message: `Regang ${app.getVersion()}`,
    detail:
      'Plans the reuse of a concrete job’s ganged wall forms, pour by pour. It computes from entered limits and ' +
      'published methods; the maker’s instructions for the equipment in use, local codes and a licensed engineer ' +
      'or competent person decide.',
    buttons: ['Close'],
  };
  const shown = window === null ? dialog.showMessageBox(options) : dialog.showMessageBox(window, options);
  shown.catch((error: unknown) => console.error(`regang: ${String(error)}`));
}
