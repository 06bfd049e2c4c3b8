// What no page of this app ever needs is refused to all of them: other addresses, new windows, frames
// of other kinds, permissions. Links to the outside open in the person's own browser, https only.
import { app, session, shell } from 'electron';
import type { WebContents } from 'electron';
import { isPageAddress } from './page-scheme.ts';

export function guardAllPages(): void {
  app.on('web-contents-created', (_event, contents) => guard(contents));
}

export function refusePermissions(): void {
  session.defaultSession.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  session.defaultSession.setPermissionCheckHandler(() => false);
  session.defaultSession.setDevicePermissionHandler(() => false);
}

function guard(contents: WebContents): void {
  contents.on('will-navigate', (event) => {
    if (!isPageAddress(event.url)) event.preventDefault();
  });
  contents.on('will-frame-navigate', (event) => {
    if (!event.isMainFrame || !isPageAddress(event.url)) event.preventDefault();
  });
  contents.on('will-redirect', (event) => {
    if (!isPageAddress(event.url)) event.preventDefault();
  });
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(({ url }) => {
    openOutside(url);
    return { action: 'deny' };
  });
}

function openOutside(address: string): void {
  if (!URL.canParse(address)) return;
  const url = new URL(address);
  if (url.protocol !== 'https:' || url.username !== '' || url.password !== '') return;
  shell.openExternal(url.href).catch((error: unknown) => console.error(`regang: ${String(error)}`));
}
