import { type Language, languages } from '@combside/words/language';
import { useSyncExternalStore } from 'react';

export const themes = ['paper', 'sun', 'dark'] as const;
export type Theme = (typeof themes)[number];

/** What a person set on this device. It is theirs, not part of the record. */
export interface Preferences {
  readonly language: Language;
  readonly theme: Theme;
}

const key = 'combside.preferences';
const listeners = new Set<() => void>();

function browserLanguage(): Language {
  const wanted = navigator.languages.map((tag) => tag.slice(0, 2));
  return languages.find((language) => wanted.includes(language)) ?? 'en';
}

function read(): Preferences {
  const base: Preferences = { language: browserLanguage(), theme: 'paper' };
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? '{}');
    const given = new Map<string, unknown>(Object.entries(kept ?? {}));
    return {
      language: languages.find((language) => language === given.get('language')) ?? base.language,
      theme: themes.find((theme) => theme === given.get('theme')) ?? base.theme,
    };
  } catch {
    return base;
  }
}

let current = read();
apply(current);

function apply(preferences: Preferences): void {
  document.documentElement.lang = preferences.language;
  document.documentElement.dataset.theme = preferences.theme;
}

/** Changes what was set and shows it at once. */
export function setPreferences(change: Partial<Preferences>): void {
  current = { ...current, ...change };
  localStorage.setItem(key, JSON.stringify(current));
  apply(current);
  for (const listener of listeners) listener();
}

export function usePreferences(): Preferences {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => current,
  );
}
