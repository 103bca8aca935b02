import type { SourceId } from '@combside/sources/bibliography';
import { useEffect, useState } from 'react';

/** Where an answer comes from, written out. The bibliography is fetched after the answer stands. */
export function AnswerSources({ ids }: { readonly ids: readonly SourceId[] }) {
  const [citation, setCitation] = useState<typeof import('@combside/sources/bibliography').citation | null>(null);
  useEffect(() => {
    let left = false;
    void import('@combside/sources/bibliography').then((module) => {
      if (!left) setCitation(() => module.citation);
    });
    return () => {
      left = true;
    };
  }, []);
  return (
    <ul className="plain-list quiet">
      {ids.map((id) => (
        <li key={id}>{citation ? citation(id) : id}</li>
      ))}
    </ul>
  );
}
