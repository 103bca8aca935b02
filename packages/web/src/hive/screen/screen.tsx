import type { ReactNode } from 'react';
import type { Saving } from '../../device/drafts/open-draft.ts';
import { StatusLine } from './status-line.tsx';

interface ScreenProps {
  readonly title: string;
  /** The apiary, where the title does not name it, and what else says where one stands. */
  readonly where?: string;
  /** Beside the title: "6 of 14". */
  readonly beside?: string;
  readonly saving?: Saving;
  readonly undoBar?: ReactNode;
  readonly children: ReactNode;
  readonly foot?: ReactNode;
}

/** The frame of every hive screen: what and whether it is saved above, the thing itself, what to do below the thumb. */
export function Screen({ title, where, beside, saving, undoBar, children, foot }: ScreenProps) {
  return (
    <div className="hive field">
      <header className="hive-head">
        <div className="first">
          <h1>{title}</h1>
          {beside && <span>{beside}</span>}
        </div>
        <StatusLine {...(saving ? { saving } : {})} {...(where ? { where } : {})} />
        {undoBar}
      </header>
      <main className="hive-body">{children}</main>
      {foot && <footer className="hive-foot">{foot}</footer>}
    </div>
  );
}
