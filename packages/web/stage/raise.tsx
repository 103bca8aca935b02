import type { Language } from '@combside/words/language';
import { type ReactNode, StrictMode } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { vi } from 'vitest';
import { Route } from 'wouter';
import { setPreferences, type Theme } from '../src/app/preferences.ts';
import { firstInstant } from './day.ts';

let root: Root | null = null;
const home = `${location.pathname}${location.search}`;

/**
 * Draws a screen at its address, as the program would, in place of whatever stood there before.
 *
 * @param half where the half stands, such as `/hive`
 * @param path below it
 */
export async function raise(half: string, path: string, screen: ReactNode, language: Language): Promise<void> {
  strike();
  // The day alone: timers go on as they are.
  vi.useFakeTimers({ toFake: ['Date'], now: Date.parse(firstInstant) });
  setPreferences({ language, theme: 'paper' });
  history.replaceState(null, '', half + path);
  const place = document.createElement('div');
  place.id = 'root';
  document.body.append(place);
  root = createRoot(place);
  root.render(
    <StrictMode>
      <Route path={half} nest>
        {screen}
      </Route>
    </StrictMode>,
  );
}

/** Takes the screen away, with what was set for it. */
export function strike(): void {
  root?.unmount();
  root = null;
  vi.useRealTimers();
  document.body.replaceChildren();
  document.documentElement.style.removeProperty('font-size');
  history.replaceState(null, '', home);
}

/** Shows the screen in another light. */
export function lit(theme: Theme): void {
  setPreferences({ theme });
}
