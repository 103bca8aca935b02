import { useEffect, useState } from 'react';

export interface Position {
  readonly latitude: number;
  readonly longitude: number;
  /** Radius in metres within which the phone says it lies. */
  readonly uncertaintyMetres: number;
}

export type Positioning =
  | { readonly state: 'finding'; readonly position: null }
  | { readonly state: 'denied' | 'failed'; readonly position: null }
  | { readonly state: 'found'; readonly position: Position };

/** Waits so long for a first position, in milliseconds, before it is said that none comes. */
const patience = 20_000;

/**
 * Measures where the phone is while the screen is open, and keeps the best measurement.
 *
 * @param turn another number measures anew
 */
export function usePosition(turn: number): Positioning {
  const [now, setNow] = useState<Positioning>({ state: 'finding', position: null });
  // biome-ignore lint/correctness/useExhaustiveDependencies: another turn is what measures anew
  useEffect(() => {
    setNow({ state: 'finding', position: null });
    if (!navigator.geolocation) {
      setNow({ state: 'failed', position: null });
      return;
    }
    const watch = navigator.geolocation.watchPosition(
      ({ coords }) => {
        const position = {
          latitude: Math.round(coords.latitude * 1e6) / 1e6,
          longitude: Math.round(coords.longitude * 1e6) / 1e6,
          uncertaintyMetres: Math.max(1, Math.ceil(coords.accuracy)),
        };
        setNow((before) =>
          before.position && before.position.uncertaintyMetres <= position.uncertaintyMetres
            ? before
            : { state: 'found', position },
        );
      },
      (error) =>
        setNow((before) =>
          before.position
            ? before
            : { state: error.code === error.PERMISSION_DENIED ? 'denied' : 'failed', position: null },
        ),
      { enableHighAccuracy: true, maximumAge: 0, timeout: patience },
    );
    return () => navigator.geolocation.clearWatch(watch);
  }, [turn]);
  return now;
}
