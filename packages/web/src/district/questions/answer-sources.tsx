import type { Source, SourceId } from '@combside/sources/bibliography';
import { useEffect, useState } from 'react';

/** The title, and where it was seen when it was not seen in the title's own place. */
const written = ({ title, seenAt }: Source) => (seenAt ? `${title} (${seenAt})` : title);

/** Where an answer comes from, written out. The bibliography is fetched after the answer stands. */
export function AnswerSources({ ids }: { readonly ids: readonly SourceId[] }) {
  const [source, setSource] = useState<typeof import('@combside/sources/bibliography').source | null>(null);
  useEffect(() => {
    let left = false;
    void import('@combside/sources/bibliography').then((module) => {
      if (!left) setSource(() => module.source);
    });
    return () => {
      left = true;
    };
  }, []);
  return (
    <ul className="plain-list quiet">
      {ids.map((id) => (
        <li key={id}>{source ? written(source(id)) : id}</li>
      ))}
    </ul>
  );
}
