import type { CombStanding } from '@combside/contract/comb-standing';
import { useWords } from '../../ui/words-context.tsx';

/** How the comb on a photograph stands: a small mark, and the words that say it. */
export function StandingShown({ standing }: { readonly standing: CombStanding }) {
  const words = useWords();
  return (
    <span className="comb-standing">
      <svg viewBox="0 0 24 24" aria-hidden="true">
        <circle cx="12" cy="12" r="9" strokeDasharray={dashed.has(standing) ? '4 3' : undefined} />
        <path d={marks[standing]} className={standing === 'read' ? 'filled' : undefined} />
      </svg>
      <span>{words.say(`district.comb.standing.${standing}`)}</span>
    </span>
  );
}

/** Not there yet: the outline is not whole. */
const dashed: ReadonlySet<CombStanding> = new Set(['not-held', 'waiting', 'reading']);

const cross = 'M8.5 8.5 L15.5 15.5 M15.5 8.5 L8.5 15.5';
/** What the machine alone did is half; a tick is a person's agreement. Round, since squares say how a colony stands. */
const marks: Readonly<Record<CombStanding, string>> = {
  'not-held': '',
  'not-read': '',
  waiting: '',
  reading: 'M8 12 H16',
  read: 'M12 3 A9 9 0 0 0 12 21 Z',
  refused: cross,
  failed: cross,
  kept: 'M12 9 V15 M9 12 H15',
  accepted: 'M7.5 12.5 L11 16 L17 8.5',
};
